package org.griplore.ingest.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;

/**
 * Brake-stop traces as a run log of one grid, a run a stop: distance between the first and the last
 * speed, time, and the mean fully developed deceleration as the remark. It is a draft: which tyre,
 * which ground and which stops count, a trace does not say.
 */
public final class BrakeTrace {
  private static final int HEAD_WITHIN = 15;
  private static final int FEWEST_SAMPLES = 8;
  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{0,9}(?:[.,]\\d{1,9})?");
  private static final Pattern NAMED =
      Pattern.compile("(?i)(?:reifen(?:satz)?|tyres?|tires?|modell?)\\s*[:=]\\s*(.+)");

  /** Names that programs give to sheets and pages. */
  private static final Pattern NO_NAME =
      Pattern.compile("(?i)|(?:sheet|tabelle|feuil|blatt|blad|page|run|stop|lauf|messung) ?\\d*");

  private static final String DRAFT =
      "The runs are worked out from a trace of speed and distance: look whether each stop counts,"
          + " and name tyre and ground.";
  private static final List<String> HEAD =
      List.of(
          "test",
          "discipline",
          "sequence",
          "tyre",
          "role",
          "run",
          "from_kmh",
          "to_kmh",
          "distance_m",
          "time_s",
          "remark");

  private BrakeTrace() {}

  /**
   * The traces of a source as a run log; empty where it holds anything but traces.
   *
   * @param name the source's name, which stands for the test
   */
  public static Optional<Content> runLog(Content content, String name) {
    if (!(content instanceof Content.Tables tables)) {
      return Optional.empty();
    }
    List<BrakeStop> stops = new ArrayList<>();
    String words = name;
    for (Grid grid : tables.grids()) {
      if (!grid.rows().isEmpty()) {
        List<BrakeStop> own = stops(grid);
        if (own.isEmpty()) {
          return Optional.empty();
        }
        stops.addAll(own);
        words += " " + grid.name() + " " + above(grid);
      }
    }
    if (stops.isEmpty()) {
      return Optional.empty();
    }
    Grid log = log(stops, stem(name), discipline(words));
    return Optional.of(new Content.Tables("brake trace", List.of(log), tables.findings()));
  }

  private static String stem(String name) {
    return name.replaceAll("\\.[A-Za-z0-9]{1,5}$", "");
  }

  private static int head(Grid grid) {
    for (int i = 0; i < Math.min(HEAD_WITHIN, grid.rows().size()); i++) {
      if (TraceColumns.of(grid.rows().get(i)) != null) {
        return i;
      }
    }
    return -1;
  }

  private static String above(Grid grid) {
    StringBuilder text = new StringBuilder();
    grid.preamble().forEach(cell -> text.append(cell.text()).append('\n'));
    for (List<GridCell> row : grid.rows().subList(0, Math.max(0, head(grid)))) {
      row.forEach(cell -> text.append(cell.text()).append(' '));
      text.append('\n');
    }
    return text.toString();
  }

  private static List<BrakeStop> stops(Grid grid) {
    int head = head(grid);
    if (head < 0) {
      return List.of();
    }
    TraceColumns columns = TraceColumns.of(grid.rows().get(head));
    Matcher named = NAMED.matcher(above(grid));
    String sheet = NO_NAME.matcher(grid.name()).matches() ? "" : grid.name();
    String tyre = named.find() ? named.group(1).strip() : sheet;
    List<BrakeStop.Sample> samples = new ArrayList<>();
    int others = 0;
    for (List<GridCell> row : grid.rows().subList(head + 1, grid.rows().size())) {
      double speed = number(row, columns.speed()) * columns.toKmh();
      double time = number(row, columns.time()) * columns.toSeconds();
      double distance = number(row, columns.distance()) * columns.toMetres();
      if (speed >= 0 && (!Double.isNaN(time) || !Double.isNaN(distance))) {
        String own = text(row, columns.tyre());
        samples.add(
            new BrakeStop.Sample(
                row.get(0).row(),
                text(row, columns.stop()),
                own.isEmpty() ? tyre : own,
                time,
                speed,
                distance));
      } else {
        others++;
      }
    }
    return samples.size() < FEWEST_SAMPLES || others > samples.size() / 4
        ? List.of()
        : BrakeStop.of(samples);
  }

  private static String text(List<GridCell> row, int column) {
    return row.stream()
        .filter(cell -> column > 0 && cell.column() == column)
        .map(GridCell::text)
        .findFirst()
        .orElse("");
  }

  private static double number(List<GridCell> row, int column) {
    for (GridCell cell : row) {
      if (column > 0 && cell.column() == column) {
        boolean figure = !cell.text().isEmpty() && NUMBER.matcher(cell.text()).matches();
        return cell.number() != null
            ? cell.number()
            : figure && cell.text().matches(".*\\d.*")
                ? Double.parseDouble(cell.text().replace(',', '.'))
                : Double.NaN;
      }
    }
    return Double.NaN;
  }

  private static String discipline(String words) {
    String text = words.toLowerCase(Locale.ROOT);
    if (text.matches("(?s).*(?:schnee|snow).*")) {
      return "snow-braking";
    }
    if (text.matches("(?s).*(?:\\beis|\\bice\\b).*")) {
      return "ice-braking";
    }
    return text.matches("(?s).*(?:nass|na\u00df|\\bwet).*") ? "wet-braking" : "dry-braking";
  }

  private static Grid log(List<BrakeStop> stops, String test, String discipline) {
    List<List<GridCell>> rows = new ArrayList<>();
    List<GridCell> header = new ArrayList<>();
    for (String word : HEAD) {
      header.add(GridCell.of(1, header.size() + 1, word));
    }
    rows.add(header);
    int sequence = 0;
    int run = 0;
    String before = null;
    for (BrakeStop stop : stops) {
      boolean another = !stop.tyre().equals(before);
      sequence += another ? 1 : 0;
      run = another ? 1 : run + 1;
      before = stop.tyre();
      String[] texts = {
        test,
        discipline,
        Integer.toString(sequence),
        stop.tyre(),
        "candidate",
        Integer.toString(run),
        figure(stop.fromKmh(), 2),
        figure(stop.toKmh(), 2),
        figure(stop.distanceM(), 3),
        figure(stop.seconds(), 3),
        Double.isNaN(stop.mfdd())
            ? ""
            : "MFDD " + figure(stop.mfdd(), 3) + " m/s2 between 0.8 and 0.1 of the first speed"
      };
      List<GridCell> row = new ArrayList<>();
      for (int i = 0; i < texts.length; i++) {
        if (!texts[i].isEmpty()) {
          row.add(GridCell.of(stop.row(), i + 1, texts[i]));
        }
      }
      rows.add(row);
    }
    return new Grid("", List.of(), rows, List.of(), true).asDraft(DRAFT);
  }

  private static String figure(double value, int decimals) {
    return Double.isNaN(value) ? "" : String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}
