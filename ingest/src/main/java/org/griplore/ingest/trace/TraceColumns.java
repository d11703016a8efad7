package org.griplore.ingest.trace;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.GridCell;

/**
 * The columns of a brake trace by their heads, German or English, with the factors to km/h, m and
 * s; a column that is not there is 0.
 */
record TraceColumns(
    int time,
    double toSeconds,
    int speed,
    double toKmh,
    int distance,
    double toMetres,
    int stop,
    int tyre) {
  private static final Pattern TIME =
      Pattern.compile("(?:(?:brems|mess)?zeit|time|elapsed(?: time)?|t|timestamp)");
  private static final Pattern SPEED =
      Pattern.compile(
          "(?:(?:fahr)?geschwindigkeit|tempo|(?:vehicle |gps )?speed|velocity|v(?:_?gps|_?veh)?)");
  private static final Pattern DISTANCE =
      Pattern.compile(
          "(?:(?:brems|fahr)?weg(?:strecke)?|(?:brems)?strecke|(?:braking |stopping )?distance|dist|s|x)");
  private static final Pattern STOP =
      Pattern.compile(
          "(?:bremsung|stopp?|brake stop|lauf|run|messung|versuch|test|nr\\.?|no\\.?|fahrt)(?: ?(?:nr|no|nummer|number|#)\\.?)?");
  private static final Pattern TYRE =
      Pattern.compile("(?:reifen(?:satz)?|tyres?|tires?|set|satz|modell?)");
  private static final Pattern UNIT =
      Pattern.compile("(.*?)[\\s,_]*(?:[\\[(/]| in )\\s*([a-z\u00b5/]{1,5})\\s*[\\])]?");

  /** The columns of a head; null unless it has a speed, and a time or a distance. */
  static TraceColumns of(List<GridCell> head) {
    TraceColumns found = new TraceColumns(0, 1, 0, 1, 0, 1, 0, 0);
    for (GridCell cell : head) {
      String text = cell.text().strip().toLowerCase(Locale.ROOT);
      if (text.length() <= 40) {
        java.util.regex.Matcher parts = UNIT.matcher(text);
        boolean stated = parts.matches();
        found =
            found.with(
                cell.column(),
                stated ? parts.group(1).strip() : text,
                stated ? parts.group(2) : "");
      }
    }
    boolean all = found.speed > 0 && (found.time > 0 || found.distance > 0);
    return all ? found : null;
  }

  private TraceColumns with(int column, String word, String unit) {
    if (speed == 0 && SPEED.matcher(word).matches()) {
      double factor = unit.equals("m/s") ? 3.6 : unit.equals("mph") ? 1.609344 : 1;
      return new TraceColumns(time, toSeconds, column, factor, distance, toMetres, stop, tyre);
    }
    if (time == 0 && TIME.matcher(word).matches()) {
      double factor = unit.equals("ms") ? 1e-3 : 1;
      return new TraceColumns(column, factor, speed, toKmh, distance, toMetres, stop, tyre);
    }
    if (distance == 0 && DISTANCE.matcher(word).matches()) {
      double factor =
          unit.equals("ft") ? 0.3048 : unit.equals("cm") ? 0.01 : unit.equals("km") ? 1000 : 1;
      return new TraceColumns(time, toSeconds, speed, toKmh, column, factor, stop, tyre);
    }
    if (stop == 0 && STOP.matcher(word).matches()) {
      return new TraceColumns(time, toSeconds, speed, toKmh, distance, toMetres, column, tyre);
    }
    if (tyre == 0 && TYRE.matcher(word).matches()) {
      return new TraceColumns(time, toSeconds, speed, toKmh, distance, toMetres, stop, column);
    }
    return this;
  }
}
