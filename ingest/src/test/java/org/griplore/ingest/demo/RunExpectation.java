package org.griplore.ingest.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the runs of a log say of each candidate against the control set, reckoned straight from the
 * printed lines: the control set's means before and after a group of n candidates, interpolated by
 * position k/(n + 1) (UN Regulation No. 109, annex 10, table 1).
 *
 * @param runs runs of the candidate
 * @param comparison braking: mean deceleration over the interpolated control mean; times: control
 *     over candidate; levels: candidate minus control in dB
 */
record RunExpectation(
    String file, String test, String discipline, String tyre, int runs, double comparison) {

  /** One expectation a candidate. */
  static List<RunExpectation> of(String file, List<String> lines) {
    Map<Integer, List<String[]>> sets = new LinkedHashMap<>();
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      sets.computeIfAbsent(Integer.valueOf(cells[2]), s -> new ArrayList<>()).add(cells);
    }
    List<RunExpectation> all = new ArrayList<>();
    List<List<String[]>> group = new ArrayList<>();
    double before = Double.NaN;
    for (List<String[]> set : sets.values()) {
      if (!set.get(0)[4].equals("reference")) {
        group.add(set);
        continue;
      }
      double after = mean(set);
      for (int k = 1; k <= group.size(); k++) {
        double control = before + k / (group.size() + 1.0) * (after - before);
        all.add(compare(file, group.get(k - 1), control));
      }
      group.clear();
      before = after;
    }
    return all;
  }

  private static RunExpectation compare(String file, List<String[]> set, double control) {
    String[] first = set.get(0);
    double mean = mean(set);
    double comparison =
        !first[8].isEmpty()
            ? mean / control
            : !first[9].isEmpty() ? control / mean : mean - control;
    return new RunExpectation(file, first[0], first[1], first[3], set.size(), comparison);
  }

  /** Mean deceleration in m/s2, mean time in s or mean level in dB, by which cells are filled. */
  private static double mean(List<String[]> set) {
    return set.stream().mapToDouble(RunExpectation::figure).average().orElseThrow();
  }

  private static double figure(String[] cells) {
    if (!cells[8].isEmpty()) {
      double from = Double.parseDouble(cells[6]) / 3.6;
      double to = Double.parseDouble(cells[7]) / 3.6;
      return (from * from - to * to) / (2 * Double.parseDouble(cells[8]));
    }
    return Double.parseDouble(cells[9].isEmpty() ? cells[10] : cells[9]);
  }

  /** The expectations as CSV. */
  static String csv(List<RunExpectation> all) {
    StringBuilder b = new StringBuilder("file,test,discipline,tyre,runs,comparison\n");
    for (RunExpectation e : all) {
      b.append(
          Delimited.line(
              ",",
              List.of(
                  e.file(),
                  e.test(),
                  e.discipline(),
                  e.tyre(),
                  Integer.toString(e.runs()),
                  String.format(java.util.Locale.ROOT, "%.6f", e.comparison()))));
      b.append('\n');
    }
    return b.toString();
  }
}
