package org.griplore.store.scenario;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.griplore.store.vocabulary.SourceKind;

/** Where a report was printed, in which language, and how its titles sound. All invented. */
record Publication(String code, String name, String language) {
  private static final List<Publication> INDEPENDENT =
      List.of(
          new Publication("pp", "Profil und Piste", "de"),
          new Publication("gq", "The Groove Quarterly", "en"),
          new Publication("cg", "Le Carnet de Gomme", "fr"),
          new Publication("md", "M\u00f6nsterdjup", "sv"));

  private static final List<String> DRY_VENUES =
      List.of(
          "Kestrelheath proving ground",
          "Torfmoos-Pr\u00fcfgel\u00e4nde",
          "Piana Lunga handling course",
          "Brackwater straight");
  private static final List<String> SNOW_VENUES =
      List.of("Frostmyr winter ground", "Isvidda test lake", "Hochjoch-Schneepiste");

  static Publication draw(SourceKind kind, Optional<String> maker, Random random) {
    return switch (kind) {
      case OWN -> new Publication("own", "", random.nextInt(3) == 0 ? "de" : "en");
      case INDEPENDENT -> ArchiveSimulator.pick(random, INDEPENDENT);
      case MAKER -> {
        String name = maker.orElseThrow();
        String code = name.substring(0, 3).toLowerCase(Locale.ROOT);
        yield new Publication(code, name + " product information", "en");
      }
    };
  }

  static String venue(Theme theme, Random random) {
    return ArchiveSimulator.pick(random, theme == Theme.WINTER ? SNOW_VENUES : DRY_VENUES);
  }

  String title(Theme theme, String size, ScenarioVehicle vehicle, int year) {
    String bare = size.substring(0, 10);
    boolean own = name.isEmpty();
    return switch (language) {
      case "de" -> german(theme) + " " + bare + " " + year + (own ? ", " + vehicle.german() : "");
      case "fr" -> french(theme) + " " + bare + ", comparatif " + year;
      case "sv" -> swedish(theme) + " " + bare + ", test " + year;
      default ->
          english(theme) + " " + bare + " " + year + (own ? ", " + vehicle.description() : "");
    };
  }

  private static String english(Theme theme) {
    return switch (theme) {
      case SUMMER -> "Summer tyres";
      case ALL_SEASON -> "All-season tyres";
      case WINTER -> "Winter tyres";
    };
  }

  private static String german(Theme theme) {
    return switch (theme) {
      case SUMMER -> "Sommerreifen";
      case ALL_SEASON -> "Ganzjahresreifen";
      case WINTER -> "Winterreifen";
    };
  }

  private static String french(Theme theme) {
    return switch (theme) {
      case SUMMER -> "Pneus \u00e9t\u00e9";
      case ALL_SEASON -> "Pneus toutes saisons";
      case WINTER -> "Pneus hiver";
    };
  }

  private static String swedish(Theme theme) {
    return switch (theme) {
      case SUMMER -> "Sommard\u00e4ck";
      case ALL_SEASON -> "\u00c5retruntd\u00e4ck";
      case WINTER -> "Vinterd\u00e4ck";
    };
  }
}
