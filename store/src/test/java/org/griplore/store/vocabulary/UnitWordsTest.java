package org.griplore.store.vocabulary;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitWordsTest {
  private static final DisciplineCatalogue CATALOGUE = DisciplineCatalogue.standard();

  @ParameterizedTest(name = "header {0}: {1}, assumed {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          Wet braking (m) | METRE | false
          Handling [s] | SECOND | false
          Wet braking 80-20 km/h [m] | METRE | false
          Aquaplaning in km/h | KILOMETRE_PER_HOUR | false
          Aquaplaning km/h | KILOMETRE_PER_HOUR | false
          Querbeschleunigung m/s² | METRE_PER_SECOND_SQUARED | false
          Deceleration (m/s^2) | METRE_PER_SECOND_SQUARED | false
          Deceleration (m/s2) | METRE_PER_SECOND_SQUARED | false
          Noise dB(A) | DECIBEL_A | false
          Noise (dB(A)) | DECIBEL_A | false
          Noise [dB (A)] | DECIBEL_A | false
          Noise (dB) | DECIBEL_A | true
          RR (kg/t) | KILOGRAM_PER_TONNE | false
          RR N/kN | NEWTON_PER_KILONEWTON | false
          Rollwiderstand in % | PERCENT_OF_BEST | true
          Wet braking (%) | PERCENT_OF_BEST | true
          Nassbremsen in Prozent | PERCENT_OF_BEST | true
          Wet braking, % of reference | PERCENT_OF_REFERENCE | false
          Nassbremsen (% vom Besten) | PERCENT_OF_BEST | false
          Schulnote | SCHOOL_MARK | false
          Komfort (Note) | SCHOOL_MARK | true
          Comfort (points) | POINTS_10 | true
          Comfort (/10) | POINTS_10 | false
          Comfort (points /10) | POINTS_10 | false
          Komfort (Punkte von 10) | POINTS_10 | false
          Confort, note sur 10 | POINTS_10 | false
          Total (out of 100) | POINTS_100 | false
          Comfort (1-10) | POINTS_10 | false
          Komfort (Punkte) | POINTS_10 | true
          Price (€) | EURO | false
          Preis in EUR | EURO | false
          Pris (SEK) | KRONA | false
          Pris, kr | KRONA | true
          Price £ | POUND_STERLING | false
          Price ($) | US_DOLLAR | true
          Temperature °C | CELSIUS | false
          Track temp. (°F) | FAHRENHEIT | false
          Stopping distance (ft) | FOOT | false
          Stopping distance, yd | YARD | false
          Weight (lbs) | POUND | false
          Speed, mph | MILE_PER_HOUR | false
          Energy kWh/100 km | KILOWATT_HOUR_PER_100_KM | false
          Energy (Wh/km) | WATT_HOUR_PER_KILOMETRE | false
          Wear (miles) | MILE | false
          Grip (g) | STANDARD_GRAVITY | true
          Traction (N) | NEWTON | false
          Lap time in seconds | SECOND | false
          Rundenzeit in Sekunden | SECOND | false
          Bremsweg in Metern 80-0 km/h (m) | METRE | false
          m | METRE | false
          """)
  void headerUnitIsRecognised(String header, Unit unit, boolean assumed) {
    UnitWords.Recognised found = UnitWords.inHeader(header).orElseThrow();
    assertThat(found.unit()).isEqualTo(unit);
    assertThat(found.assumed()).isEqualTo(assumed);
    assertThat(header).contains(found.found());
  }

  @ParameterizedTest(name = "header {0} names no unit")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Wet braking
          Wet braking 80-20 km/h
          Wet braking 80 - 20 km/h
          Braking from 100 km/h (wet)
          Braking (100-0 km/h)
          Dry braking from 60 mph
          Geräusch bei 80 km/h
          Pattern S
          Tyre N
          Road notes
          Gesamtnote
          ''
          """)
  void conditionOrWordIsNoUnit(String header) {
    assertThat(UnitWords.inHeader(header)).isEmpty();
  }

  @ParameterizedTest(name = "cell {0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          38.4 m | METRE
          38,4m | METRE
          69 dB(A) | DECIBEL_A
          1 299:- | KRONA
          € 89,90 | EURO
          £79 | POUND_STERLING
          89,90 € | EURO
          7/10 | POINTS_10
          8.5 /10 | POINTS_10
          84 von 100 | POINTS_100
          97.4 % | PERCENT_OF_BEST
          7,35 m/s² | METRE_PER_SECOND_SQUARED
          126 ft | FOOT
          -4 °C | CELSIUS
          18.5 lb | POUND
          """)
  void cellUnitIsRecognised(String cell, Unit unit) {
    assertThat(UnitWords.inCell(cell).orElseThrow().unit()).isEqualTo(unit);
  }

  @ParameterizedTest(name = "cell {0} names no unit")
  @CsvSource({"38.4", "n/a", "205/55 R16", "'2,1 (gut)'", "-", "''"})
  void cellWithoutUnit(String cell) {
    assertThat(UnitWords.inCell(cell)).isEmpty();
  }

  @Test
  void disciplineDecidesBetweenMeanings() {
    assertThat(unit("Gewicht (g)", "mass")).isEqualTo(Unit.GRAM);
    assertThat(unit("Grip (g)", "wet-circle")).isEqualTo(Unit.STANDARD_GRAVITY);
    assertThat(unit("Traction (lbs)", "snow-traction")).isEqualTo(Unit.POUND_FORCE);
    assertThat(unit("Pris (sek)", "price")).isEqualTo(Unit.KRONA);
    assertThat(unit("Varvtid (sek)", "wet-handling")).isEqualTo(Unit.SECOND);
  }

  private static Unit unit(String header, String key) {
    return UnitWords.inHeader(header, CATALOGUE.get(key)).orElseThrow().unit();
  }
}
