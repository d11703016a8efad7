package org.griplore.ingest.demo;

import java.util.Set;

/** How a workbook shares the disciplines out among its sheets. */
enum SheetGroup {
  WET(
      "Wet",
      "Nass",
      "Mouill\u00e9",
      "V\u00e5tt",
      Set.of(
          "wet-braking",
          "wet-handling",
          "wet-circle",
          "straight-aquaplaning",
          "curved-aquaplaning",
          "wet-feel")),
  DRY(
      "Dry",
      "Trocken",
      "Sec",
      "Torrt",
      Set.of("dry-braking", "dry-handling", "steering-response", "dry-feel")),
  SNOW(
      "Snow and ice",
      "Schnee und Eis",
      "Neige et glace",
      "Sn\u00f6 och is",
      Set.of("snow-braking", "snow-handling", "snow-traction", "ice-braking")),
  COST(
      "Noise and cost",
      "Ger\u00e4usch und Kosten",
      "Bruit et co\u00fbts",
      "Buller och kostnad",
      Set.of(
          "exterior-noise",
          "interior-noise",
          "comfort",
          "rolling-resistance",
          "energy-use",
          "wear",
          "mass",
          "price"));

  private final String en;
  private final String de;
  private final String fr;
  private final String sv;
  private final Set<String> disciplines;

  SheetGroup(String en, String de, String fr, String sv, Set<String> disciplines) {
    this.en = en;
    this.de = de;
    this.fr = fr;
    this.sv = sv;
    this.disciplines = disciplines;
  }

  boolean holds(String discipline) {
    return disciplines.contains(discipline);
  }

  String name(Lingo lingo) {
    return switch (lingo) {
      case EN -> en;
      case DE -> de;
      case FR -> fr;
      case SV -> sv;
    };
  }

  /** The name of the first sheet. */
  static String overview(Lingo lingo) {
    return switch (lingo) {
      case EN -> "Overview";
      case DE -> "\u00dcbersicht";
      case FR -> "Synth\u00e8se";
      case SV -> "\u00d6versikt";
    };
  }
}
