package org.griplore.store.vocabulary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisciplineCatalogueTest {
  private static final DisciplineCatalogue CATALOGUE = DisciplineCatalogue.standard();

  @TempDir Path folder;

  @Test
  void standardDisciplinesStandInDisplayOrder() {
    assertThat(CATALOGUE.all())
        .extracting(Discipline::key)
        .containsExactly(
            "wet-braking",
            "dry-braking",
            "snow-braking",
            "ice-braking",
            "wet-handling",
            "dry-handling",
            "snow-handling",
            "wet-circle",
            "straight-aquaplaning",
            "curved-aquaplaning",
            "exterior-noise",
            "interior-noise",
            "rolling-resistance",
            "snow-traction",
            "wear",
            "energy-use",
            "comfort",
            "steering-response",
            "wet-feel",
            "dry-feel",
            "mass",
            "price",
            "overall");
  }

  @ParameterizedTest(name = "{0} in {1}: {2}, compared by {3}, kept in {4}")
  @CsvSource({
    "wet-braking,m,LOW,RATIO,m",
    "wet-braking,ft,LOW,RATIO,m",
    "wet-braking,m/s2,HIGH,RATIO,m/s2",
    "wet-braking,g,HIGH,RATIO,m/s2",
    "wet-braking,points,HIGH,POINTS,points",
    "wet-braking,mark (1 best),LOW,POINTS,mark (1 best)",
    "wet-braking,% of best,HIGH,RATIO,% of best",
    "wet-handling,s,LOW,RATIO,s",
    "wet-handling,min,LOW,RATIO,s",
    "wet-handling,km/h,HIGH,RATIO,km/h",
    "wet-handling,mph,HIGH,RATIO,km/h",
    "wet-circle,m/s2,HIGH,RATIO,m/s2",
    "wet-circle,s,LOW,RATIO,s",
    "wet-circle,km/h,HIGH,RATIO,km/h",
    "straight-aquaplaning,mph,HIGH,RATIO,km/h",
    "curved-aquaplaning,km/h,HIGH,RATIO,km/h",
    "exterior-noise,dB(A),LOW,LEVEL,dB(A)",
    "interior-noise,points,HIGH,POINTS,points",
    "rolling-resistance,kg/t,LOW,RATIO,N/kN",
    "rolling-resistance,coefficient,LOW,RATIO,N/kN",
    "rolling-resistance,N,LOW,RATIO,N",
    "snow-traction,N,HIGH,RATIO,N",
    "snow-traction,lbf,HIGH,RATIO,N",
    "snow-traction,s,LOW,RATIO,s",
    "snow-traction,m/s2,HIGH,RATIO,m/s2",
    "wear,km,HIGH,RATIO,km",
    "wear,mi,HIGH,RATIO,km",
    "wear,mm,LOW,RATIO,mm",
    "wear,gram,LOW,RATIO,gram",
    "comfort,points,HIGH,POINTS,points",
    "comfort,points of 100,HIGH,POINTS,points of 100",
    "price,EUR,LOW,RATIO,EUR",
    "price,SEK,LOW,RATIO,SEK",
    "mass,lb,LOW,RATIO,kg",
    "overall,points,HIGH,POINTS,points",
    "overall,points of 100,HIGH,POINTS,points of 100",
    "overall,mark (1 best),LOW,POINTS,mark (1 best)",
    "overall,% of best,HIGH,RATIO,% of best"
  })
  void unitDecidesDirectionAndScale(
      String key, String symbol, Direction better, Scale scale, String kept) {
    Discipline discipline = CATALOGUE.get(key);
    Unit unit = Unit.ofSymbol(symbol).orElseThrow();
    assertThat(discipline.accepts(unit)).isTrue();
    assertThat(discipline.directionOf(unit)).isEqualTo(better);
    assertThat(discipline.scaleOf(unit)).isEqualTo(scale);
    assertThat(discipline.keptIn(unit).symbol()).isEqualTo(kept);
  }

  @Test
  void bareNumberIsReadAsTheUsualUnit() {
    assertThat(CATALOGUE.get("wet-braking").directionOf(Unit.NUMBER)).isEqualTo(Direction.LOW);
    assertThat(CATALOGUE.get("comfort").directionOf(Unit.NUMBER)).isEqualTo(Direction.HIGH);
    assertThat(CATALOGUE.get("exterior-noise").scaleOf(Unit.NUMBER)).isEqualTo(Scale.LEVEL);
  }

  @ParameterizedTest(name = "{0} never comes in {1}")
  @CsvSource({"wet-braking,kg", "wet-braking,dB(A)", "price,m", "exterior-noise,s", "comfort,m"})
  void foreignUnitIsRefused(String key, String symbol) {
    Discipline discipline = CATALOGUE.get(key);
    Unit unit = Unit.ofSymbol(symbol).orElseThrow();
    assertThat(discipline.accepts(unit)).isFalse();
    assertThatThrownBy(() -> discipline.directionOf(unit))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining(key)
        .hasMessageContaining(symbol);
    assertThatThrownBy(() -> discipline.scaleOf(unit)).isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> discipline.keptIn(unit)).isInstanceOf(Refusal.class);
  }

  @Test
  void repeatabilitySaysItsGround() {
    Repeatability wet = CATALOGUE.get("wet-braking").typicalRepeatability().orElseThrow();
    assertThat(wet.basis()).isEqualTo(Repeatability.Basis.MEMORY);
    assertThat(wet.source()).contains("from memory, check the official text");
    // Machine limit 0.075 N/kN: Regulation (EU) 2020/740, annex V, section 5.
    Repeatability rolling =
        CATALOGUE.get("rolling-resistance").typicalRepeatability().orElseThrow();
    assertThat(rolling.value()).isEqualTo(0.075);
    assertThat(rolling.basis()).isEqualTo(Repeatability.Basis.LIMIT);
    // No published figure is known for lap times or subjective points: none is invented.
    assertThat(CATALOGUE.get("wet-handling").typicalRepeatability()).isEmpty();
    assertThat(CATALOGUE.get("comfort").typicalRepeatability()).isEmpty();
  }

  @Test
  void unknownKeyIsRefusedWithTheKeysThereAre() {
    assertThatThrownBy(() -> CATALOGUE.get("wet-breaking"))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("wet-breaking")
        .hasMessageContaining("wet-braking, dry-braking");
  }

  @Test
  void userAddsADisciplineWithoutCode() throws IOException {
    DisciplineCatalogue own =
        CATALOGUE.with(
            file(
                """
                {"disciplines": [{"key": "gravel-braking", "name": "Gravel braking", "unit": "m",
                  "better": "low", "scale": "ratio", "describes": "Distance on gravel.",
                  "alternatives": [{"unit": "m/s2", "better": "high"}],
                  "words": {"en": ["gravel brak*"], "de": ["schotterbrems*"]}}]}
                """));
    assertThat(own.byHeader("Braking on gravel (m)").orElseThrow().discipline().key())
        .isEqualTo("gravel-braking");
    assertThat(own.get("gravel-braking").directionOf(Unit.STANDARD_GRAVITY))
        .isEqualTo(Direction.HIGH);
    assertThat(own.all()).hasSize(CATALOGUE.all().size() + 1);
    assertThat(CATALOGUE.find("gravel-braking")).isEmpty();
  }

  @Test
  void userChangesOnlyTheFieldsGiven() throws IOException {
    DisciplineCatalogue own =
        CATALOGUE.with(
            file(
                """
                {"disciplines": [{"key": "wet-handling", "repeatability":
                  {"kind": "cv", "value": 0.004, "basis": "measured", "source": "own laps"}}]}
                """));
    Discipline changed = own.get("wet-handling");
    assertThat(changed.typicalRepeatability().orElseThrow().value()).isEqualTo(0.004);
    assertThat(changed.headerWords()).isEqualTo(CATALOGUE.get("wet-handling").headerWords());
    assertThat(own.all())
        .extracting(Discipline::key)
        .isEqualTo(CATALOGUE.all().stream().map(Discipline::key).toList());
  }

  @ParameterizedTest(name = "{0} is told with key and field")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"key": "x", "unit": "furlong"} | x, unit: found furlong; expected a unit among m,
          {"key": "X y"} | entry 1, key: found X y; expected lower-case words
          {"name": "No key"} | entry 1, key: nothing stands there; expected a text
          {"key": "wet-braking", "better": "less"} | better: found less; expected low or high
          {"key": "wet-braking", "scale": "level"} | scale: found level; expected ratio
          {"key": "wet-braking", "colour": "red"} | wet-braking, colour: found colour; expected a field
          {"key": "wet-braking", "words": {"en": "wet"}} | wet-braking, words.en: found "wet"; expected a list
          {"key": "wet-braking", "words": {"en": ["*"]}} | wet-braking, words.en: found *; expected words
          {"key": "wet-braking", "repeatability": {"value": -1}} | repeatability.value: found -1; expected a number above 0
          {"key": "wet-braking", "alternatives": [{"unit": "m/s2"}]} | wet-braking, better: nothing stands there
          {"key": "new", "name": "New"} | new, unit: nothing stands there; expected a text
          """)
  void userFileErrorNamesFileKeyAndField(String entry, String sentence) throws IOException {
    Path file = file("{\"disciplines\": [" + entry + "]}");
    assertThatThrownBy(() -> CATALOGUE.with(file))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("own.json")
        .hasMessageContaining(sentence);
  }

  @ParameterizedTest(name = "file of {0} is refused")
  @CsvSource({"[1,own.json", "{},disciplines", "'',disciplines"})
  void brokenFileIsRefused(String text, String named) throws IOException {
    Path file = file(text);
    assertThatThrownBy(() -> CATALOGUE.with(file))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining(named);
  }

  @Test
  void missingFileIsRefused() {
    assertThatThrownBy(() -> CATALOGUE.with(folder.resolve("none.json")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("none.json cannot be read");
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("own.json"), text);
  }
}
