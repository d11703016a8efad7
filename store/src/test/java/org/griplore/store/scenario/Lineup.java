package org.griplore.store.scenario;

import static org.griplore.store.vocabulary.SeasonClass.ALL_SEASON;
import static org.griplore.store.vocabulary.SeasonClass.SUMMER;
import static org.griplore.store.vocabulary.SeasonClass.WINTER;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.griplore.store.vocabulary.SeasonClass;

/** The invented makers, lines and models: 9 makers, 14 lines, 45 models launched 2011 to 2022. */
final class Lineup {
  /** A model's name with its launch year and the other spellings met in files. */
  private record Generation(String name, int launched, List<String> aliases) {}

  private final List<ScenarioModel> models = new ArrayList<>();

  private Lineup() {}

  /** All models, line by line, oldest generation first. */
  static List<ScenarioModel> models() {
    Lineup l = new Lineup();
    l.line(
        "Velmora",
        "Aurelis",
        SUMMER,
        "touring",
        of("Aurelis 3", 2011, "Velmora Aurelis III"),
        of("Aurelis 4", 2015, "Velmora Aurelis IV"),
        of("Aurelis 5", 2018, "Velmora Aurelis V", "VM Aurelis 5"),
        of("Aurelis 6", 2022, "Velmora Aurelis VI"));
    l.line(
        "Ostran\u00e9",
        "Corvant",
        SUMMER,
        "touring",
        of("Corvant", 2012),
        of("Corvant II", 2016, "Ostran\u00e9 Corvant 2"),
        of("Corvant III", 2021, "Ostran\u00e9 Corvant 3"));
    l.line(
        "Quillarn",
        "Tarvion",
        SUMMER,
        "comfort",
        of("Tarvion 10", 2013, "Quillarn TV10"),
        of("Tarvion 11", 2017, "Quillarn TV11"),
        of("Tarvion 12", 2021, "Quillarn TV12"));
    l.line(
        "Kirazumi",
        "Hayari",
        SUMMER,
        "sport",
        of("Hayari S-100", 2012),
        of("Hayari S-200", 2016, "Kirazumi HS200"),
        of("Hayari S-300", 2020, "Kirazumi HS300"));
    l.line(
        "Drevanox",
        "Fervaro Sport",
        SUMMER,
        "sport",
        of("Fervaro Sport", 2013),
        of("Fervaro Sport Evo", 2017, "Drevanox FS Evo"),
        of("Fervaro Sport Evo 2", 2022, "Drevanox FS Evo 2"));
    l.line(
        "Saint-Orvel",
        "\u00c9clavie",
        SUMMER,
        "eco",
        of("\u00c9clavie 2011", 2011),
        of("\u00c9clavie 2014", 2014, "Saint-Orvel \u00c9clavie '14"),
        of("\u00c9clavie 2018", 2018, "Saint-Orvel \u00c9clavie '18"),
        of("\u00c9clavie 2022", 2022, "Saint-Orvel \u00c9clavie '22"));
    l.line(
        "Velmora",
        "Solvanne",
        ALL_SEASON,
        "touring",
        of("Solvanne", 2013),
        of("Solvanne 2", 2017, "Velmora Solvanne II"),
        of("Solvanne 3", 2021, "Velmora Solvanne III"));
    l.line(
        "Zelvartis",
        "Omnivar",
        ALL_SEASON,
        "touring",
        of("Omnivar AS1", 2012, "Zelvartis Omnivar AS-1"),
        of("Omnivar AS2", 2016, "Zelvartis Omnivar AS-2"),
        of("Omnivar AS3", 2020, "Zelvartis Omnivar AS-3"));
    l.line(
        "Lavorinne",
        "Tuttanno",
        ALL_SEASON,
        "comfort",
        of("Tuttanno I", 2014, "Lavorinne Tuttanno 1"),
        of("Tuttanno II", 2018, "Lavorinne Tuttanno 2"),
        of("Tuttanno III", 2022, "Lavorinne Tuttanno 3"));
    l.line(
        "Saint-Orvel",
        "Calend\u00e9",
        ALL_SEASON,
        "eco",
        of("Calend\u00e9", 2013),
        of("Calend\u00e9 2", 2016),
        of("Calend\u00e9 2 Neo", 2020, "Saint-Orvel Calend\u00e9 Neo"));
    l.line(
        "Hjortm\u00e5ne",
        "Sn\u00f6klar",
        WINTER,
        "nordic",
        of("Sn\u00f6klar 7", 2011),
        of("Sn\u00f6klar 8", 2014, "Hjortmaane Snoeklar 8"),
        of("Sn\u00f6klar 9", 2018, "Hjortmaane Snoeklar 9"),
        of("Sn\u00f6klar 10", 2022, "Hjortmaane Snoeklar 10"));
    l.line(
        "Ostran\u00e9",
        "Givralle",
        WINTER,
        "touring",
        of("Givralle", 2013),
        of("Givralle II", 2017, "Ostran\u00e9 Givralle 2"),
        of("Givralle III", 2021, "Ostran\u00e9 Givralle 3"));
    l.line(
        "Zelvartis",
        "Polvarin",
        WINTER,
        "touring",
        of("Polvarin W4", 2012),
        of("Polvarin W5", 2016, "Zelvartis Polvarin W-5"),
        of("Polvarin W6", 2021, "Zelvartis Polvarin W-6"));
    l.line(
        "Quillarn",
        "Rimefell",
        WINTER,
        "comfort",
        of("Rimefell", 2013),
        of("Rimefell Evo", 2017),
        of("Rimefell Neo", 2021));
    return List.copyOf(l.models);
  }

  private static Generation of(String name, int launched, String... aliases) {
    return new Generation(name, launched, List.of(aliases));
  }

  private void line(
      String maker, String line, SeasonClass season, String segment, Generation... generations) {
    Optional<String> follows = Optional.empty();
    for (int g = 0; g < generations.length; g++) {
      Generation one = generations[g];
      models.add(
          new ScenarioModel(
              maker,
              line,
              one.name(),
              g + 1,
              one.launched(),
              season,
              segment,
              follows,
              one.aliases()));
      follows = Optional.of(maker + " " + one.name());
    }
  }
}
