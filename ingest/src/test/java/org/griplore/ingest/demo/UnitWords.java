package org.griplore.ingest.demo;

import org.griplore.store.vocabulary.Unit;

/** How units are written in the files. */
final class UnitWords {
  private UnitWords() {}

  static String of(Unit unit, Lingo lingo) {
    return switch (unit) {
      case METRE_PER_SECOND_SQUARED -> "m/s\u00b2";
      case CURRENCY -> "EUR";
      case KRONA -> "kr";
      case POINTS_10 ->
          switch (lingo) {
            case EN -> "points";
            case DE -> "Punkte";
            case FR -> "points";
            case SV -> "po\u00e4ng";
          };
      case POINTS_100 ->
          switch (lingo) {
            case EN -> "points of 100";
            case DE -> "Punkte von 100";
            case FR -> "points sur 100";
            case SV -> "po\u00e4ng av 100";
          };
      case SCHOOL_MARK ->
          switch (lingo) {
            case EN -> "mark, 1 best";
            case DE -> "Note";
            case FR -> "note, 1 = meilleur";
            case SV -> "betyg, 1 b\u00e4st";
          };
      case PERCENT_OF_BEST ->
          switch (lingo) {
            case EN -> "% of best";
            case DE -> "% vom Besten";
            case FR -> "% du meilleur";
            case SV -> "% av b\u00e4sta";
          };
      case PERCENT_OF_REFERENCE ->
          switch (lingo) {
            case EN -> "% of reference";
            case DE -> "% der Referenz";
            case FR -> "% de la r\u00e9f\u00e9rence";
            case SV -> "% av referens";
          };
      default -> unit.symbol();
    };
  }
}
