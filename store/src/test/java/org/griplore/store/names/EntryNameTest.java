package org.griplore.store.names;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.TyreState.Wear;
import org.griplore.store.vocabulary.Variant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names with what stands beside them, from a table; the tyres are invented. */
class EntryNameTest {
  static List<String> cases() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("src/test/resources/names/entry-names.csv"));
    return lines.subList(1, lines.size());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void readsAsTheTableSays(String line) {
    String[] expected = line.split(";", -1);
    EntryName name = EntryName.of(expected[0]);
    assertThat(name.model()).isEqualTo(expected[1]);
    assertThat(name.full()).isEqualTo(expected[2].isEmpty() ? expected[1] : expected[2]);
    TyreState state = name.state();
    assertThat(state == null ? "" : state.wear().key()).isEqualTo(expected[3]);
    measure(state == null ? null : state.treadMm(), expected[4]);
    measure(state == null ? null : state.mileageKm(), expected[5]);
    measure(state == null ? null : state.ageYears(), expected[6]);
    assertThat(words(name.variant())).isEqualTo(expected[7]);
    assertThat(name.size() == null ? "" : name.size()).isEqualTo(expected[8]);
    assertThat(String.join("|", name.marks())).isEqualTo(expected[9]);
  }

  private static void measure(Double read, String expected) {
    if (expected.isEmpty()) {
      assertThat(read).isNull();
    } else {
      assertThat(read).isCloseTo(Double.parseDouble(expected), within(1e-9));
    }
  }

  private static String words(Variant variant) {
    List<String> words = new ArrayList<>();
    if (variant.ev()) {
      words.add("ev");
    }
    if (variant.extraLoad()) {
      words.add("extra-load");
    }
    if (variant.runFlat()) {
      words.add("run-flat");
    }
    if (variant.seal()) {
      words.add("seal");
    }
    return String.join(" ", words);
  }

  @Test
  void aNameThatIsListedWholeStaysWhole() {
    EntryName name = EntryName.of("Velmora Aurelis 5 (EV)");
    assertThat(name.model("Velmora Aurelis 5 (EV)"::equals)).isEqualTo("Velmora Aurelis 5 (EV)");
    assertThat(name.model(other -> false)).isEqualTo("Velmora Aurelis 5");
  }

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource(
      nullValues = "-",
      value = {
        "worn, WORN, -",
        "Neuzustand, NEW, -",
        "4 mm, WORN, 4",
        "'usé (3,5 mm)', WORN, 3.5",
        "new 8 mm, NEW, 8",
        "изношенная, WORN, -",
        "摩耗品, WORN, -",
        "wet, -, -"
      })
  void aCellOfItsOwnTellsAState(String text, Wear wear, Double tread) {
    TyreState state = EntryName.state(text).orElse(null);
    assertThat(state == null ? null : state.wear()).isEqualTo(wear);
    assertThat(state == null ? null : state.treadMm()).isEqualTo(tread);
  }

  /** Reading a name that was read changes nothing more. */
  @ParameterizedTest
  @MethodSource("cases")
  void readingTwiceIsReadingOnce(String line) {
    String model = EntryName.of(line.split(";", -1)[0]).model();
    assertThat(EntryName.of(model).model()).isEqualTo(model);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "(", ")(", "- -", "()", ",,,", "mm", "/32", "[worn", "worn)"})
  void oddTextsDoNoHarm(String odd) {
    assertThat(EntryName.of(odd)).isNotNull();
    assertThat(EntryName.state(odd)).isNotNull();
  }
}
