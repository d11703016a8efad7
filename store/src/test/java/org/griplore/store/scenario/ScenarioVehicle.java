package org.griplore.store.scenario;

import java.util.List;

/**
 * A test vehicle, described and not named.
 *
 * @param description the words used in reports
 * @param german the same in German
 * @param massKg mass as tested, kg
 * @param electric whether its energy use is measured
 * @param sizes sizes it is tested in, with load index and speed symbol
 */
public record ScenarioVehicle(
    String description, String german, int massKg, boolean electric, List<String> sizes) {

  static final List<ScenarioVehicle> ALL =
      List.of(
          of("compact hatchback", "Kompaktwagen", 1350, "205/55 R16 91V", "195/65 R15 91H"),
          of("small car", "Kleinwagen", 1180, "195/65 R15 91H", "195/55 R16 87H"),
          of("compact estate", "kompakter Kombi", 1480, "205/55 R16 94V XL", "225/45 R17 94W XL"),
          of("mid-size saloon", "Mittelklasse-Limousine", 1620, "225/50 R17 98W XL"),
          of("compact crossover", "kompakter Crossover", 1540, "215/60 R17 96H", "225/55 R18 98V"),
          of(
              "sports coup\u00e9",
              "Sportcoup\u00e9",
              1560,
              "245/40 R18 97Y XL",
              "245/35 R19 93Y XL"),
          electric("mid-size electric saloon", "Elektro-Limousine", 2050, "235/45 R18 98Y XL"),
          electric(
              "large electric crossover",
              "gro\u00dfer Elektro-Crossover",
              2290,
              "255/45 R20 105W XL",
              "235/55 R19 105V XL"));

  /** Nominal section width in millimetres of a size. */
  static int width(String size) {
    return Integer.parseInt(size.substring(0, 3));
  }

  /** Rim diameter code (inches) of a size. */
  static int rim(String size) {
    return Integer.parseInt(size.substring(8, 10));
  }

  private static ScenarioVehicle of(String description, String german, int massKg, String... s) {
    return new ScenarioVehicle(description, german, massKg, false, List.of(s));
  }

  private static ScenarioVehicle electric(
      String description, String german, int massKg, String... s) {
    return new ScenarioVehicle(description, german, massKg, true, List.of(s));
  }
}
