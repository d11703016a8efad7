package org.griplore.ingest.messy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.griplore.store.vocabulary.Unit;

/**
 * The stated truth of a drawn file: a test with its tyres and what was measured of them.
 *
 * @param details {@code date}, {@code size}, {@code season}, {@code vehicle} and {@code venue}
 * @param measures what was measured, each with a value a tyre
 */
record DrawnTest(Map<String, String> details, List<Tyre> tyres, List<Measure> measures) {

  /** A tyre; the generation may be empty. */
  record Tyre(String maker, String line, String generation) {
    String model() {
      return generation.isEmpty() ? line : line + " " + generation;
    }

    String name() {
      return maker + " " + model();
    }
  }

  /**
   * What was measured.
   *
   * @param window speeds in km/h as {@code 80-20}; empty where none are told
   * @param decimals digits behind the mark
   * @param values one a tyre, rounded as printed
   */
  record Measure(String discipline, Unit unit, String window, int decimals, List<Double> values) {}

  /** How a discipline usually comes out. */
  private record Usual(String discipline, Unit unit, double level, double spread, int decimals) {}

  private static final List<Tyre> ALL = known();
  private static final List<String> SIZES =
      List.of(
          "205/55 R16 91V",
          "225/45 R17 94W",
          "195/65 R15 91H",
          "235/55 R19 105W",
          "245/40 R18 97Y");
  private static final List<String> VEHICLES =
      List.of("compact hatchback", "mid-size saloon", "electric crossover");
  private static final List<String> VENUES = List.of("Hollerfeld", "Norrhed", "Valsecca");

  private static final List<Usual> EVERYWHERE =
      List.of(
          new Usual("wet-braking", Unit.METRE, 32, 2, 1),
          new Usual("dry-braking", Unit.METRE, 37, 1.2, 1),
          new Usual("wet-handling", Unit.SECOND, 79, 1.5, 2),
          new Usual("dry-handling", Unit.SECOND, 62, 0.8, 2),
          new Usual("straight-aquaplaning", Unit.KILOMETRE_PER_HOUR, 81, 3, 1),
          new Usual("curved-aquaplaning", Unit.METRE_PER_SECOND_SQUARED, 3.1, 0.3, 2),
          new Usual("exterior-noise", Unit.DECIBEL_A, 71, 0.9, 1),
          new Usual("rolling-resistance", Unit.NEWTON_PER_KILONEWTON, 8.1, 0.8, 2),
          new Usual("comfort", Unit.POINTS_10, 7.4, 0.8, 1),
          new Usual("price", Unit.EURO, 96, 15, 2));
  private static final List<Usual> WINTER =
      List.of(
          new Usual("snow-braking", Unit.METRE, 27.5, 1.2, 1),
          new Usual("ice-braking", Unit.METRE, 42, 3, 1),
          new Usual("snow-handling", Unit.SECOND, 69, 1.2, 2));

  private static List<Tyre> known() {
    List<Tyre> tyres = new ArrayList<>();
    add(tyres, "Velmora", "Aurelis", "3", "4", "5", "6");
    add(tyres, "Ostrané", "Corvant", "", "II", "III");
    add(tyres, "Quillarn", "Tarvion", "10", "11", "12");
    add(tyres, "Kirazumi", "Hayari", "S-100", "S-200", "S-300");
    add(tyres, "Drevanox", "Fervaro Sport", "", "Evo", "Evo 2");
    add(tyres, "Saint-Orvel", "Éclavie", "2014", "2018", "2022");
    add(tyres, "Velmora", "Solvanne", "2", "3");
    add(tyres, "Zelvartis", "Omnivar", "AS1", "AS2", "AS3");
    add(tyres, "Lavorinne", "Tuttanno", "I", "II", "III");
    add(tyres, "Hjortmåne", "Snöklar", "8", "9", "10");
    add(tyres, "Ostrané", "Givralle", "", "II", "III");
    add(tyres, "Zelvartis", "Polvarin", "W4", "W5", "W6");
    add(tyres, "Quillarn", "Rimefell", "", "Evo", "Neo");
    add(tyres, "Pellimar", "Contrada", "Plus", "4x");
    add(tyres, "Ulvaryd", "Norrsken", "R2", "R3");
    return tyres;
  }

  private static void add(List<Tyre> tyres, String maker, String line, String... generations) {
    for (String generation : generations) {
      tyres.add(new Tyre(maker, line, generation));
    }
  }

  static DrawnTest draw(Random random) {
    List<Tyre> field = new ArrayList<>(ALL);
    Collections.shuffle(field, random);
    field = List.copyOf(field.subList(0, 4 + random.nextInt(7)));
    String season = List.of("summer", "winter", "all-season").get(random.nextInt(3));
    List<Usual> usual = new ArrayList<>(EVERYWHERE);
    Collections.shuffle(usual, random);
    usual = new ArrayList<>(usual.subList(0, 2 + random.nextInt(4)));
    if (season.equals("winter")) {
      usual.add(0, WINTER.get(random.nextInt(WINTER.size())));
    }
    List<Measure> measures = new ArrayList<>();
    for (Usual one : usual) {
      boolean braking = one.discipline().endsWith("-braking");
      boolean several = one.discipline().equals("wet-braking") && random.nextInt(6) == 0;
      if (several) {
        measures.add(measure(one, 0.42, "50-0", field.size(), random));
        measures.add(measure(one, 1, "80-0", field.size(), random));
        measures.add(measure(one, 1.55, "100-0", field.size(), random));
      } else {
        String window = braking && random.nextInt(3) == 0 ? "80-20" : "";
        measures.add(measure(one, 1, window, field.size(), random));
      }
    }
    Map<String, String> details = new LinkedHashMap<>();
    details.put(
        "date",
        String.format(
            "20%02d-%02d-%02d",
            15 + random.nextInt(10), 1 + random.nextInt(12), 13 + random.nextInt(15)));
    details.put("size", SIZES.get(random.nextInt(SIZES.size())));
    details.put("season", season);
    details.put("vehicle", VEHICLES.get(random.nextInt(VEHICLES.size())));
    details.put("venue", VENUES.get(random.nextInt(VENUES.size())));
    return new DrawnTest(details, field, measures);
  }

  private static Measure measure(Usual one, double share, String window, int n, Random random) {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double far = Math.max(-2.2, Math.min(2.2, random.nextGaussian()));
      values.add(rounded((one.level() + one.spread() * far) * share, one.decimals()));
    }
    return new Measure(one.discipline(), one.unit(), window, one.decimals(), values);
  }

  static double rounded(double value, int decimals) {
    double scale = Math.pow(10, decimals);
    return Math.round(value * scale) / scale;
  }
}
