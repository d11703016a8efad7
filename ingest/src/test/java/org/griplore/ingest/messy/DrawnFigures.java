package org.griplore.ingest.messy;

import java.util.Collections;
import java.util.Locale;
import org.griplore.store.vocabulary.Unit;

/** Figures as a drawn file prints them. */
final class DrawnFigures {
  private DrawnFigures() {}

  /** A figure with as many decimals and the file's decimal mark. */
  static String number(double value, int decimals, DrawnLook look) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return look.comma() ? text.replace('.', ',') : text;
  }

  /** A figure of a measure; times perhaps as minutes and seconds. */
  static String number(double value, DrawnTest.Measure measure, DrawnLook look) {
    if (measure.unit() == Unit.SECOND && look.lap() && value > 30) {
      int minutes = (int) (value / 60);
      String seconds = number(value - 60 * minutes, 2, look);
      return minutes + ":" + (seconds.length() < 5 ? "0" : "") + seconds;
    }
    return number(value, measure.decimals(), look);
  }

  /** A tyre's figure, with its unit where units stand in the cells. */
  static String cell(DrawnTest.Measure measure, int tyre, String unit, DrawnLook look) {
    String figure = number(measure.values().get(tyre), measure, look);
    boolean with =
        look.units() == DrawnLook.Units.CELLS
            && !unit.isEmpty()
            && measure.unit() != Unit.POINTS_10;
    return with ? figure + " " + unit : figure;
  }

  /** The mean, least, most or standard deviation of a measure. */
  static double summary(String role, DrawnTest.Measure measure) {
    return switch (role) {
      case "mean" -> DrawnScores.mean(measure.values());
      case "min" -> Collections.min(measure.values());
      case "max" -> Collections.max(measure.values());
      case "sd" -> DrawnScores.sd(measure.values());
      default -> throw new IllegalArgumentException(role);
    };
  }
}
