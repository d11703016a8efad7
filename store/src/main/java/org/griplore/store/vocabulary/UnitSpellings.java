package org.griplore.store.vocabulary;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * How units are spelt in English, German, French and Swedish tables. A spelling without blanks and
 * in lower case leads to the units it may mean, the likeliest first.
 */
final class UnitSpellings {
  /**
   * What a spelling may mean.
   *
   * @param units likeliest first
   * @param assumed whether the spelling leaves doubt (per cent of what, which crown, marks)
   * @param shy whether it is also an ordinary word or letter, so that it counts only where a unit
   *     is expected: in brackets, after "in", after a comma, or alone
   */
  record Meaning(List<Unit> units, boolean assumed, boolean shy) {}

  private static final Map<String, Meaning> SPELLINGS = new HashMap<>();
  private static final Pattern IGNORED = Pattern.compile("[\\s\\u00a0\\u202f^·]+");

  static {
    sure("m/s2 m/s² ms-2 ms−2 m/sec2 m/s/s", Unit.METRE_PER_SECOND_SQUARED);
    sure("km/h kmh km/st kph km/std km/tim km/t", Unit.KILOMETRE_PER_HOUR);
    sure("mph mi/h", Unit.MILE_PER_HOUR);
    sure("m/s m/sec", Unit.METRE_PER_SECOND);
    sure("db(a) dba db[a] db/a", Unit.DECIBEL_A);
    doubtful("db dezibel decibel decibels décibels", Unit.DECIBEL_A);
    sure("n/kn", Unit.NEWTON_PER_KILONEWTON);
    sure("kg/t kg/to kg/1000kg kgf/tf kg/ton kg/tonne", Unit.KILOGRAM_PER_TONNE);
    sure("kwh/100km kwh/100kilometer", Unit.KILOWATT_HOUR_PER_100_KM);
    sure("kwh/100mi kwh/100miles", Unit.KILOWATT_HOUR_PER_100_MILES);
    sure("wh/km", Unit.WATT_HOUR_PER_KILOMETRE);
    sure("°c ℃ celsius gradcelsius degc", Unit.CELSIUS);
    sure("°f ℉ fahrenheit degf", Unit.FAHRENHEIT);
    sure("€ eur euro euros", Unit.EURO);
    sure("£ gbp", Unit.POUND_STERLING);
    sure("chf sfr sfr. fr.", Unit.SWISS_FRANC);
    sure("usd us$", Unit.US_DOLLAR);
    doubtful("$", Unit.US_DOLLAR);
    doubtful("kr kr. kronor :-", Unit.KRONA);
    doubtful(
        "% percent prozent pourcent procent pct", Unit.PERCENT_OF_BEST, Unit.PERCENT_OF_REFERENCE);
    sure(
        "%ofbest percentofbest prozentvombesten %vombesten %desbesten %dumeilleur %avbästa"
            + " 100=best 100%=best best=100 best=100% bestwert=100 bester=100 bester=100% bäst=100"
            + " meilleur=100",
        Unit.PERCENT_OF_BEST);
    sure(
        "%ofreference percentofreference %ofref %ofref. %ofcontrol %derreferenz %vonreferenz"
            + " %delaréférence %avreferens ref=100 reference=100 reference=100% referenz=100"
            + " referenz=100% control=100 100=reference 100=ref",
        Unit.PERCENT_OF_REFERENCE);
    sure("1-10 1–10 0-10 0–10 10=best 10=bestnote max10 max.10 schulnote/10", Unit.POINTS_10);
    sure("0-100 0–100 1-100 1–100 max100 max.100", Unit.POINTS_100);
    sure("schulnote schulnoten mark(1best) 1best 1=best 1=sehrgut 1=bestnote", Unit.SCHOOL_MARK);
    doubtful("1-6 1–6 note1-6 noten1-6 note(1-6) noten(1-6)", Unit.SCHOOL_MARK);
    sure("points1-10 punkte1-10 poäng1-10 points(1-10) punkte(1-10) poäng(1-10)", Unit.POINTS_10);
    doubtful("punkte punkt pkt pkt. points point pts pts. poäng", Unit.POINTS_10, Unit.POINTS_100);
    shyDoubtful("p betyg score bewertung rating", Unit.POINTS_10, Unit.POINTS_100);
    shyDoubtful("note noten mark marks grade", Unit.SCHOOL_MARK, Unit.POINTS_10);
    for (String of : "/ von outof of sur av de".split(" ")) {
      for (String word : ",points,point,pts,punkte,pkt,poäng,note,score,betyg,rating".split(",")) {
        sure(word + of + "10", Unit.POINTS_10);
        sure(word + of + "100", Unit.POINTS_100);
      }
    }
    shyDoubtful("c grad", Unit.CELSIUS);
    shy("m metre metres meter meters mètre mètres", Unit.METRE);
    shy("km kilometre kilometres kilometer kilometers kilomètre kilomètres", Unit.KILOMETRE);
    shy("mm millimetre millimetres millimeter millimètres", Unit.MILLIMETRE);
    shy("ft ft. feet foot pieds", Unit.FOOT);
    shy("yd yds yard yards", Unit.YARD);
    shy("mi mile miles", Unit.MILE);
    shy("inch inches zoll pouce pouces tum \"", Unit.INCH);
    shy("s sec secs sec. second seconds sekunde sekunden seconde secondes sekunder", Unit.SECOND);
    shyDoubtful("sek sek.", Unit.SECOND, Unit.KRONA);
    shy("min minute minutes minuten minuter", Unit.MINUTE);
    shyDoubtful("g", Unit.STANDARD_GRAVITY, Unit.GRAM);
    shy("gram grams gramm gramme grammes", Unit.GRAM);
    shy("kg kilo kilos kilogram kilograms kilogramm", Unit.KILOGRAM);
    shy("lb lbs lb. lbs.", Unit.POUND, Unit.POUND_FORCE);
    shy("lbf", Unit.POUND_FORCE);
    shy("n newton newtons", Unit.NEWTON);
    shy("kn kilonewton", Unit.KILONEWTON);
    shyDoubtful("coefficient coeff. beiwert koeffizient µ mu koefficient", Unit.COEFFICIENT);
  }

  private UnitSpellings() {}

  /** The meaning of a text that is a unit and nothing else; null where it is none. */
  static Meaning of(String text) {
    String packed = IGNORED.matcher(text).replaceAll("");
    if (packed.equals("SEK")) {
      return new Meaning(List.of(Unit.KRONA), false, false);
    }
    return SPELLINGS.get(packed.toLowerCase(Locale.ROOT));
  }

  private static void sure(String spellings, Unit... units) {
    put(spellings, new Meaning(List.of(units), false, false));
  }

  private static void doubtful(String spellings, Unit... units) {
    put(spellings, new Meaning(List.of(units), true, false));
  }

  private static void shy(String spellings, Unit... units) {
    put(spellings, new Meaning(List.of(units), false, true));
  }

  private static void shyDoubtful(String spellings, Unit... units) {
    put(spellings, new Meaning(List.of(units), true, true));
  }

  private static void put(String spellings, Meaning meaning) {
    for (String spelling : spellings.split(" ")) {
      SPELLINGS.put(spelling, meaning);
    }
  }
}
