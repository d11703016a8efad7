package org.griplore.query.directory;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** All names are invented. */
class DirectoryTest {
  private static final Directory DIRECTORY =
      new Directory(
          List.of(
              model("Velmora Aurelis 4", "Velmora Aurelis IV"),
              model("Velmora Aurelis 5"),
              model("Velmora Solvanne"),
              model("Kirazumi Hayari S-100"),
              model("Ostrané Givralle"),
              new DirectoryEntry(
                  DirectoryEntry.Kind.LINE, "Velmora Aurelis", List.of(), "", "line", "line", ""),
              new DirectoryEntry(
                  DirectoryEntry.Kind.TEST,
                  "Summer tyres 2021",
                  List.of("own-2021-2", "205/55 R16"),
                  "",
                  "test",
                  "test",
                  "own-2021-2")));

  private static DirectoryEntry model(String name, String... aliases) {
    return new DirectoryEntry(
        DirectoryEntry.Kind.MODEL, name, List.of(aliases), "", "model", "model", name);
  }

  private static List<String> found(String text) {
    return DIRECTORY.find(text, 5).stream().map(found -> found.entry().name()).toList();
  }

  @ParameterizedTest(name = "\"{0}\" finds {1} first")
  @CsvSource({
    "velmora aurelis 4, Velmora Aurelis 4",
    "aurelis iv, Velmora Aurelis 4",
    "velmroa 5, Velmora Aurelis 5",
    "VELMORRA  solv, Velmora Solvanne",
    "s100, Kirazumi Hayari S-100",
    "haiari, Kirazumi Hayari S-100",
    "ostrane givr, Ostrané Givralle",
    "givrale, Ostrané Givralle",
    "aurelis, Velmora Aurelis",
    "own-2021-2, Summer tyres 2021",
    "205/55, Summer tyres 2021"
  })
  void names(String typed, String first) {
    assertThat(found(typed)).startsWith(first);
  }

  @Test
  void aGenerationIsNeverTakenForAnother() {
    assertThat(found("aurelis 6")).isEmpty();
    assertThat(found("aurelis 5")).containsExactly("Velmora Aurelis 5");
  }

  @Test
  void everyWordMustFitAndNothingFitsNothing() {
    assertThat(found("velmora hayari")).isEmpty();
    assertThat(found("")).isEmpty();
    assertThat(found("!?")).isEmpty();
    assertThat(found("zzzz")).isEmpty();
  }

  @Test
  void eachKindHasItsShare() {
    assertThat(DIRECTORY.find("velmora", 1))
        .extracting(found -> found.entry().kind())
        .containsExactlyInAnyOrder(DirectoryEntry.Kind.MODEL, DirectoryEntry.Kind.LINE);
  }

  @ParameterizedTest(name = "a beginning of any word is found, seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void beginnings(long seed) {
    Random random = new Random(seed);
    List<DirectoryEntry> entries =
        IntStream.range(0, 200)
            .mapToObj(
                i ->
                    model(
                        random
                            .ints(8, 'a', 'z' + 1)
                            .collect(
                                StringBuilder::new,
                                StringBuilder::appendCodePoint,
                                StringBuilder::append)
                            .toString()))
            .toList();
    Directory directory = new Directory(entries);
    for (DirectoryEntry entry : entries) {
      String beginning = entry.name().substring(0, 3 + random.nextInt(6));
      assertThat(directory.find(beginning, 200))
          .extracting(found -> found.entry().name())
          .contains(entry.name());
      assertThat(directory.find(entry.name(), 1).get(0).entry()).isEqualTo(entry);
    }
  }
}
