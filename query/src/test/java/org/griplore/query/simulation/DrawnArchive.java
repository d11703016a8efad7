package org.griplore.query.simulation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.option.Choices;
import org.griplore.store.archive.EntryColumns;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.ReportRecord;
import org.griplore.store.archive.ResultColumns;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;
import org.griplore.store.vocabulary.TestDecision;
import org.griplore.store.vocabulary.TestDecision.Verdict;
import org.griplore.store.vocabulary.Unit;

/**
 * An archive written line by line from a truth that a test states, without files or a database:
 * models, tests, and results in them. A model may have several results in a test. All names are
 * invented and mean nothing.
 */
public final class DrawnArchive {
  private static final DisciplineCatalogue CATALOGUE = DisciplineCatalogue.standard();

  private final List<ModelRecord> models = new ArrayList<>();
  private final List<TestRecord> tests = new ArrayList<>();
  private final List<ReportRecord> reports = new ArrayList<>();
  private final List<int[]> entries = new ArrayList<>();
  private final List<String> sizes = new ArrayList<>();
  private final List<double[]> results = new ArrayList<>();
  private final Map<String, Integer> disciplines = new HashMap<>();
  private final List<String> keys = new ArrayList<>();
  private final List<String> units = new ArrayList<>();
  private final List<TestDecision> decisions = new ArrayList<>();

  /** What is said of a test; parts may be null. */
  public record Said(String date, SourceKind kind, String size, String vehicle, String venue) {
    /** An own test of a size and date. */
    public static Said own(String date, String size) {
      return new Said(date, SourceKind.OWN, size, null, null);
    }
  }

  /** A model of a maker and line; {@code follows} is a position, or -1. Gives its position. */
  public int model(String maker, String line, int launched, int follows) {
    String name = maker + " " + line + " " + (models.size() + 1);
    models.add(
        new ModelRecord(
            models.size() + 1,
            name,
            maker,
            line,
            null,
            new TestDate(String.valueOf(launched)),
            null,
            null,
            follows < 0 ? null : (Integer) (follows + 1),
            List.of()));
    return models.size() - 1;
  }

  /** Models of one maker that follow nothing. Gives the position of the first. */
  public int models(int count) {
    for (int i = 0; i < count; i++) {
      model("Maker " + i % 7, "Line " + i, 2010, -1);
    }
    return models.size() - count;
  }

  /** A test. Gives its position. */
  public int test(Said said) {
    Details details =
        new Details(
            null,
            said.date == null ? null : new TestDate(said.date),
            said.kind,
            null,
            said.size,
            null,
            said.vehicle,
            null,
            said.venue,
            null,
            null,
            Map.of());
    int test = tests.size();
    tests.add(new TestRecord(test + 1, "t" + (test + 1), details, List.of(test)));
    reports.add(new ReportRecord(test + 1, test, 1, "drawn", details));
    return test;
  }

  /** A model in a test, a further one each time. Gives its position. */
  public int entry(int test, int model) {
    entries.add(new int[] {test, model});
    sizes.add(null);
    return entries.size() - 1;
  }

  /** A value in the discipline's own unit; spread NaN and runs 0 where not stated. */
  public DrawnArchive value(int entry, String discipline, double value, double spread, int runs) {
    return value(entry, discipline, value, CATALOGUE.get(discipline).unit(), spread, runs);
  }

  /** A value in a unit. */
  public DrawnArchive value(
      int entry, String discipline, double value, Unit unit, double spread, int runs) {
    results.add(new double[] {entry, discipline(discipline), unit(unit), value, spread, runs, 0});
    return this;
  }

  /** A published place alone. */
  public DrawnArchive place(int entry, String discipline, int place) {
    results.add(new double[] {entry, discipline(discipline), -1, Double.NaN, Double.NaN, 0, place});
    return this;
  }

  private int discipline(String key) {
    return disciplines.computeIfAbsent(
        key,
        k -> {
          keys.add(k);
          return keys.size() - 1;
        });
  }

  private int unit(Unit unit) {
    int known = units.indexOf(unit.symbol());
    if (known < 0) {
      units.add(unit.symbol());
    }
    return known < 0 ? units.size() - 1 : known;
  }

  /** Decides on two tests, by their keys: t1, t2 and so on. */
  public void decide(String test, String other, Verdict verdict) {
    decisions.add(new TestDecision(test, other, verdict, Instant.EPOCH, ""));
  }

  /** How many models there are. */
  public int modelCount() {
    return models.size();
  }

  /** The archive as questions see it. */
  public Evidence evidence() {
    int n = entries.size();
    int[] test = entries.stream().mapToInt(entry -> entry[0]).toArray();
    int[] model = entries.stream().mapToInt(entry -> entry[1]).toArray();
    EntryColumns columns =
        new EntryColumns(test, model, test.clone(), sizes.toArray(new String[n]));
    return new Evidence(
        new Snapshot(
            1,
            models,
            tests,
            reports,
            keys,
            units,
            List.of(Circumstance.MEASURED),
            decisions,
            columns,
            resultColumns()),
        CATALOGUE);
  }

  private ResultColumns resultColumns() {
    int n = results.size();
    ResultColumns columns =
        new ResultColumns(
            new long[n],
            new int[n],
            new short[n],
            new short[n],
            new double[n],
            new double[n],
            new int[n],
            new int[n]);
    for (int i = 0; i < n; i++) {
      double[] row = results.get(i);
      columns.id()[i] = i + 1;
      columns.entry()[i] = (int) row[0];
      columns.discipline()[i] = (short) row[1];
      columns.unit()[i] = (short) row[2];
      columns.value()[i] = row[3];
      columns.spread()[i] = row[4];
      columns.runs()[i] = (int) row[5];
      columns.place()[i] = (int) row[6];
    }
    return columns;
  }

  /** A filter that lets everything count. */
  public static Filter open(Evidence evidence) {
    return new Filter(Choices.of("simulated", "", Filter.OPTIONS, Map.of()), evidence);
  }

  /** Some of the numbers from 0 to {@code of}, drawn without repeats, in ascending order. */
  public static int[] some(int count, int of, Random random) {
    int[] all = new int[of];
    java.util.Arrays.setAll(all, i -> i);
    for (int i = 0; i < Math.min(count, of); i++) {
      int j = i + random.nextInt(of - i);
      int kept = all[i];
      all[i] = all[j];
      all[j] = kept;
    }
    return java.util.Arrays.stream(all, 0, Math.min(count, of)).sorted().toArray();
  }
}
