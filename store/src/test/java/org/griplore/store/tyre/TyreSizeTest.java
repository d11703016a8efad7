package org.griplore.store.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TyreSizeTest {
  /**
   * The forms P215/65R15XL 95H, 215/65R15 96H, LT235/85R16C, T145/80D18 103M and 31x10.5 R15 LT
   * stand so on a printed vehicle handbook page; the others are spellings of them.
   */
  @ParameterizedTest(name = "{0} is {1}, key {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          205/55 R16 91V | 205/55 R16 91V | 205/55 R16
          205/55R16 91V | 205/55 R16 91V | 205/55 R16
          205/55R16 91 V | 205/55 R16 91V | 205/55 R16
          205/55 R 16 91V | 205/55 R16 91V | 205/55 R16
          205 / 55 R16 | 205/55 R16 | 205/55 R16
          205/55r16 91v | 205/55 R16 91V | 205/55 R16
          '  205/55 R16  ' | 205/55 R16 | 205/55 R16
          P215/65R15XL 95H | P215/65 R15 95H XL | 215/65 R15
          215/65R15 96H | 215/65 R15 96H | 215/65 R15
          LT235/85R16C | LT235/85 R16C | LT235/85 R16C
          T145/80D18 103M | T145/80 D18 103M | T145/80 D18
          31x10.5 R15 LT | 31x10.5 R15 LT | 31x10.5 R15 LT
          31X10.50R15LT | 31x10.5 R15 LT | 31x10.5 R15 LT
          '31x10,5 R15' | 31x10.5 R15 | 31x10.5 R15
          225/75 R16C 121/120R | 225/75 R16C 121/120R | 225/75 R16C
          225/75R16 C 116/114 R | 225/75 R16C 116/114R | 225/75 R16C
          185 R14C 102/100R | 185 R14C 102/100R | 185 R14C
          245/40 ZR19 (98Y) XL | 245/40 ZR19 (98Y) XL | 245/40 R19
          245/40 ZR19 | 245/40 ZR19 | 245/40 R19
          245/40 R19 98Y EXTRA LOAD | 245/40 R19 98Y XL | 245/40 R19
          245/40 R19 98Y REINF. | 245/40 R19 98Y XL | 245/40 R19
          245/40 R19 98Y Reinforced | 245/40 R19 98Y XL | 245/40 R19
          HL 245/40 R19 101Y | HL245/40 R19 101Y | 245/40 R19
          205/55 RF16 91V | 205/55 RF16 91V | 205/55 R16
          245/40 ZRF19 98Y | 245/40 ZRF19 98Y | 245/40 R19
          205/55 R16 RF 94V | 205/55 R16 94V XL | 205/55 R16
          205/55 R16 94V RF | 205/55 R16 94V XL | 205/55 R16
          205/55 RF16 94V RF | 205/55 RF16 94V XL | 205/55 R16
          205/55 R16 94H XL M+S 3PMSF | 205/55 R16 94H XL M+S 3PMSF | 205/55 R16
          205/55 R16 94H M&S | 205/55 R16 94H M+S | 205/55 R16
          205/55 R16 91V SL | 205/55 R16 91V | 205/55 R16
          155/80-13 79T | 155/80 D13 79T | 155/80 D13
          155/80 B13 | 155/80 B13 | 155/80 B13
          235/75 R17.5 | 235/75 R17.5 | 235/75 R17.5
          """)
  void formIsRead(String text, String canonical, String key) {
    TyreSize size = TyreSize.parse(text);
    assertThat(size).hasToString(canonical);
    assertThat(size.key()).isEqualTo(key);
    assertThat(TyreSize.parse(canonical)).isEqualTo(size);
  }

  @ParameterizedTest(name = "{0} is refused")
  @ValueSource(
      strings = {
        "205-55-16",
        "205/55",
        "205/55/16",
        "205/55 16",
        "R16",
        "",
        "91V",
        "205/55 R16 91",
        "205/55 R16 V",
        "205/55 R16 91X",
        "205/55 R16 911V",
        "205/55 R16 (91V",
        "205/55 R16 91V)",
        "205/55 R16 91V wet",
        "205/55 R61",
        "205/555 R16",
        "2055/55 R16",
        "95/55 R16",
        "31x105 R15",
        "38.4 m"
      })
  void otherTextIsRefusedWithAnExample(String text) {
    assertThatThrownBy(() -> TyreSize.parse(text))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> {
              assertThat(refusal.sentence()).contains("\"" + text + "\"", "205/55 R16 91V");
              assertThat(refusal.problems()).hasSize(1);
              assertThat(refusal.problems().get(0).found()).isEqualTo(text);
              assertThat(refusal.problems().get(0).expected()).isEqualTo("like 205/55 R16 91V");
            });
  }

  @Test
  void refusalSaysWhichFigureIsBeyond() {
    assertThatThrownBy(() -> TyreSize.parse("205/55 R61"))
        .hasMessageContaining("rim diameter code 8 to 30, not 61");
  }

  @Test
  void rfMeansRunFlatInTheStructureAndExtraLoadBehindTheRim() {
    TyreSize runFlat = TyreSize.parse("205/55 RF16 91V");
    assertThat(runFlat.structure().runFlat()).isTrue();
    assertThat(runFlat.extraLoad()).isFalse();
    TyreSize reinforced = TyreSize.parse("205/55 R16 RF 94V");
    assertThat(reinforced.structure().runFlat()).isFalse();
    assertThat(reinforced.extraLoad()).isTrue();
  }

  @Test
  void serviceDescriptionIsTakenApart() {
    ServiceDescription van = TyreSize.parse("225/75 R16C 116/114R").service().orElseThrow();
    assertThat(van.loadIndex()).isEqualTo(116);
    assertThat(van.dualLoadIndex()).hasValue(114);
    assertThat(van.speed()).isEqualTo(SpeedSymbol.R);
    assertThat(van.loadKg()).as("the table ends at 115").isEmpty();
    assertThat(TyreSize.parse("205/55 R16 91V").service().orElseThrow().loadKg()).hasValue(615);
  }

  /** ZR and brackets: from memory, check the official text. */
  @ParameterizedTest(name = "{0}: {1} km/h, open-ended {2}")
  @CsvSource({
    "205/55 R16 91V,240,false",
    "245/40 ZR19 98W,270,false",
    "245/40 ZR19 98Y,300,false",
    "245/40 ZR19 (98Y),300,true",
    "245/40 ZR19,,true",
    "205/55 R16,,false"
  })
  void speedIsSaidAsFarAsMarked(String text, Integer kmh, boolean openEnded) {
    TyreSize size = TyreSize.parse(text);
    assertThat(size.speedKmh()).isEqualTo(kmh == null ? OptionalInt.empty() : OptionalInt.of(kmh));
    assertThat(size.speedOpenEnded()).isEqualTo(openEnded);
  }

  @ParameterizedTest(name = "in {0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Size: 205/55 R16 91V | 205/55 R16 91V
          Summer tyres 2021 in 225/45R17 94Y XL, twelve models | 225/45 R17 94Y XL
          Winterreifen 195/65 R15 im Vergleich | 195/65 R15
          (205/55 R16 91V) | 205/55 R16 91V
          31x10.5 R15 LT mud tyres | 31x10.5 R15 LT
          Tested 14/05/2021 at 80-20 km/h | -
          999/99 R16 or 205/55 R16 | 205/55 R16
          Rundenzeit 95,3 s | -
          """)
  void sizeIsFoundInALongerText(String text, String expected) {
    assertThat(TyreSize.find(text).map(TyreSize::toString).orElse("-")).isEqualTo(expected);
  }

  @Test
  void defaultLocaleDoesNotMatter() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertThat(TyreSize.parse("205/55 r16 91v reinf")).hasToString("205/55 R16 91V XL");
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest(name = "seed {0}: reading what was written gives the same size")
  @ValueSource(longs = {11, 12, 13, 14, 15})
  void parsingTheCanonicalTextGivesTheSize(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 400; i++) {
      TyreSize size = anySize(random);
      assertThat(TyreSize.parse(size.toString())).as("seed %d, case %d", seed, i).isEqualTo(size);
      assertThat(TyreSize.parse(size.key()).key()).isEqualTo(size.key());
      assertThat(TyreSize.find("Test in " + size + ", wet")).contains(size);
    }
  }

  private static TyreSize anySize(Random random) {
    boolean flotation = random.nextInt(10) == 0;
    boolean plain = !flotation && random.nextInt(10) == 0;
    Section section =
        flotation
            ? new Section.Flotation(26 + random.nextInt(15), 8 + random.nextInt(12) / 2.0)
            : new Section.Metric(
                105 + 5 * random.nextInt(60),
                plain ? OptionalInt.empty() : OptionalInt.of(25 + 5 * random.nextInt(14)));
    Structure structure =
        plain
            ? random.nextBoolean() ? Structure.RADIAL : Structure.RADIAL_ZR
            : Structure.values()[random.nextInt(Structure.values().length)];
    SizePrefix prefix =
        flotation
            ? random.nextBoolean() ? SizePrefix.METRIC : SizePrefix.LIGHT_TRUCK
            : SizePrefix.values()[random.nextInt(SizePrefix.values().length)];
    Optional<ServiceDescription> service =
        random.nextInt(4) == 0 ? Optional.empty() : Optional.of(anyService(random));
    return new TyreSize(
        prefix,
        section,
        structure,
        10 + random.nextInt(26) / 2.0,
        !flotation && random.nextInt(6) == 0,
        service,
        random.nextBoolean(),
        random.nextBoolean(),
        random.nextBoolean());
  }

  private static ServiceDescription anyService(Random random) {
    int index = 60 + random.nextInt(70);
    return new ServiceDescription(
        index,
        random.nextInt(5) == 0 ? OptionalInt.of(index - 2) : OptionalInt.empty(),
        SpeedSymbol.values()[random.nextInt(SpeedSymbol.values().length)],
        random.nextInt(8) == 0);
  }
}
