package org.griplore.ingest.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.griplore.store.scenario.DisciplineTruth;
import org.griplore.store.scenario.Scenario;
import org.griplore.store.scenario.SimulatedEntry;
import org.griplore.store.scenario.SimulatedReport;
import org.griplore.store.scenario.SimulatedResult;

/**
 * The run log of one discipline of one test: the control set before, after and between groups of up
 * to three candidates, on a track that drifts along the day.
 *
 * <p>A set's runs scatter about a mean that agrees with the simulated result, so that the reduced
 * log and the report tell the same.
 */
final class RunLog {
  static final String HEADER =
      "test,discipline,sequence,tyre,role,run,from_kmh,to_kmh,distance_m,time_s,level_db,value,"
          + "unit,surface_c,air_c,remark";

  /** The control tyre, which is no candidate of any report. */
  static final String CONTROL = "Control set K7";

  private final DisciplineTruth d;
  private final SimulatedReport report;
  private final double drift;
  private final Random random;
  private final List<String> lines = new ArrayList<>();
  private int sequence;

  /** A log whose performance drifts by a share (or dB) from the first control set to the last. */
  RunLog(Scenario scenario, SimulatedReport report, String discipline, double drift) {
    this.d = scenario.discipline(discipline);
    this.report = report;
    this.drift = drift;
    this.random = new Random(report.key().hashCode() * 31L + discipline.hashCode());
  }

  /** The file's lines. */
  List<String> lines() {
    lines.add(HEADER);
    List<SimulatedEntry> tested =
        report.entries().stream().filter(e -> e.results().containsKey(d.key())).toList();
    int sets = 1 + tested.size() + (tested.size() + 2) / 3;
    double middle =
        tested.stream().mapToDouble(e -> d.shown(value(e))).average().orElseThrow() - 0.01;
    double control = value(middle);
    set(CONTROL, "reference", control, sets);
    for (int i = 0; i < tested.size(); i++) {
      set(tested.get(i).model().fullName(), "candidate", value(tested.get(i)), sets);
      if (i % 3 == 2 || i == tested.size() - 1) {
        set(CONTROL, "reference", control, sets);
      }
    }
    return lines;
  }

  private double value(SimulatedEntry entry) {
    SimulatedResult result = entry.results().get(d.key());
    return result.value();
  }

  private double value(double shown) {
    return d.value(0, shown);
  }

  private void set(String tyre, String role, double value, int sets) {
    double along = sets == 1 ? 0 : sequence / (sets - 1.0);
    sequence++;
    int runs = d.runs();
    double[] errors = new double[runs];
    double mean = 0;
    for (int i = 0; i < runs; i++) {
      errors[i] = d.repeatability() * random.nextGaussian();
      mean += errors[i] / runs;
    }
    for (int i = 0; i < runs; i++) {
      double performance = drift * along + errors[i] - mean;
      double surface = report.surfaceC() + 3 * along + 0.3 * random.nextGaussian();
      double air = report.airC() + 1.5 * along + 0.2 * random.nextGaussian();
      List<String> cells = new ArrayList<>();
      cells.add(report.key());
      cells.add(d.key());
      cells.add(Integer.toString(sequence));
      cells.add(tyre);
      cells.add(role);
      cells.add(Integer.toString(i + 1));
      cells.addAll(measured(value, performance));
      cells.add(fixed(surface, 1));
      cells.add(fixed(air, 1));
      cells.add(remark(tyre, i + 1));
      lines.add(Delimited.line(",", cells));
    }
  }

  /** from_kmh to unit: eight cells... of which a discipline fills some. */
  private List<String> measured(double value, double performance) {
    return switch (d.key()) {
      case "wet-braking" -> braking(80, 20, value, performance);
      case "dry-braking" -> braking(100, 5, value, performance);
      case "snow-braking" -> braking(50, 5, value, performance);
      case "exterior-noise" -> {
        double speed = 80 + 0.6 * random.nextGaussian();
        yield List.of(fixed(speed, 1), "", "", "", fixed(value - performance, 1), "", "");
      }
      case "wet-handling" ->
          List.of("", "", "", fixed(value * StrictMath.exp(-performance), 2), "", "", "");
      default -> throw new IllegalArgumentException("no run log of " + d.key());
    };
  }

  /** The value is the distance between the nominal speeds; a run starts and ends near them. */
  private List<String> braking(double from, double to, double value, double performance) {
    double v1 = from + 0.5 + 0.25 * random.nextGaussian();
    double v2 = to - 0.2 + 0.1 * random.nextGaussian();
    double deceleration = (from * from - to * to) / value * StrictMath.exp(performance);
    double distance = (v1 * v1 - v2 * v2) / deceleration;
    return List.of(fixed(v1, 2), fixed(v2, 2), fixed(distance, 2), "", "", "", "");
  }

  private static String fixed(double value, int digits) {
    return String.format(Locale.ROOT, "%." + digits + "f", value);
  }

  private String remark(String tyre, int run) {
    return Optional.ofNullable(REMARKS.get(report.key() + "|" + d.key() + "|" + tyre + "|" + run))
        .orElse("");
  }

  /** Remarks on single runs, by test, discipline, tyre and run. */
  private static final java.util.Map<String, String> REMARKS =
      java.util.Map.of(
          "own-2019-1|snow-braking|" + CONTROL + "|1", "first stops on a freshly combed lane",
          "own-2021-2|wet-braking|" + CONTROL + "|4", "gust across the track, film rippled",
          "own-2022-2|wet-braking|" + CONTROL + "|1", "sprinklers running for 20 min before",
          "own-2022-2|exterior-noise|" + CONTROL + "|3", "lark over microphone 2, level checked");
}
