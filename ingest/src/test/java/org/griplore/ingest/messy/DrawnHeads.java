package org.griplore.ingest.messy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.griplore.store.vocabulary.Unit;

/** What heads the columns of a drawn table, in its language. */
final class DrawnHeads {
  private final DrawnLook look;
  private final List<DrawnTest.Measure> measures;
  private final List<String> said = new ArrayList<>();
  private final boolean cyrillic;
  private final boolean longNoise;
  private final boolean kmh;

  DrawnHeads(DrawnLook look, List<DrawnTest.Measure> measures, Random random) {
    this.look = look;
    this.measures = measures;
    measures.forEach(measure -> said.add(look.words().say(measure.discipline(), random)));
    cyrillic = look.words().language().equals("ru") && random.nextBoolean();
    longNoise = random.nextBoolean();
    kmh = random.nextBoolean();
  }

  /** The discipline in words with its window, without a unit. */
  String bare(int column) {
    String discipline = measures.get(column).discipline();
    for (int i = 0; i < column; i++) {
      if (measures.get(i).discipline().equals(discipline)) {
        return said.get(i) + window(column);
      }
    }
    return said.get(column) + window(column);
  }

  private String window(int column) {
    String window = measures.get(column).window();
    return window.isEmpty() ? "" : " " + window + (kmh ? " km/h" : "");
  }

  /** The head with its unit where units stand in heads. */
  String full(int column) {
    return withUnit(bare(column), column);
  }

  /** A surface that several disciplines are of; empty for the others. */
  String surface(int column, Random random) {
    String discipline = measures.get(column).discipline();
    return grouped(discipline)
        ? look.words().say(discipline.substring(0, discipline.indexOf('-')), random)
        : "";
  }

  /** What stands below a surface: the manoeuvre, or the whole head where there is no surface. */
  String manoeuvre(int column, Random random) {
    String discipline = measures.get(column).discipline();
    return grouped(discipline)
        ? withUnit(
            look.words().say(discipline.substring(discipline.indexOf('-') + 1), random)
                + window(column),
            column)
        : full(column);
  }

  private static boolean grouped(String discipline) {
    return discipline.endsWith("-braking") || discipline.endsWith("-handling");
  }

  private String withUnit(String head, int column) {
    String unit = unit(column);
    if (unit.isEmpty()) {
      return head;
    }
    return switch (look.units()) {
      case BRACKETS -> head + " [" + unit + "]";
      case PARENTHESES -> head + " (" + unit + ")";
      case COMMA -> head + ", " + unit;
      default -> head;
    };
  }

  /** A unit as printed; empty where minutes and seconds say it themselves. */
  String unit(int column) {
    Unit unit = measures.get(column).unit();
    return switch (unit) {
      case METRE -> cyrillic ? "м" : "m";
      case SECOND -> look.lap() ? "" : cyrillic ? "с" : "s";
      case KILOMETRE_PER_HOUR -> cyrillic ? "км/ч" : "km/h";
      case METRE_PER_SECOND_SQUARED -> cyrillic ? "м/с²" : "m/s²";
      case DECIBEL_A -> cyrillic ? "дБ" : longNoise ? "dB(A)" : "dB";
      case NEWTON_PER_KILONEWTON -> longNoise ? "N/kN" : "kg/t";
      case POINTS_10 -> "1-10";
      case EURO -> longNoise ? "EUR" : "€";
      default -> throw new IllegalArgumentException(unit.symbol());
    };
  }
}
