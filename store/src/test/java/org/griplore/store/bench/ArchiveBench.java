package org.griplore.store.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Stream;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Figures;

/**
 * Adding a million results as one file, revising that file, and loading everything. Argument:
 * number of results (1000000).
 */
public final class ArchiveBench {
  private static final int RESULTS_A_TEST = 100;

  private ArchiveBench() {}

  /** Measures in a temporary folder. */
  public static void main(String[] arguments) throws IOException {
    int results = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000_000;
    Path folder = Files.createTempDirectory("archive-bench");
    try (Archive archive = Archive.openOrCreate(folder)) {
      double added = seconds(() -> Figures.add(archive, "a.csv", results / RESULTS_A_TEST, 0));
      told("added, results/s", results / added);
      load(archive);
      double revised = seconds(() -> Figures.add(archive, "a.csv", results / RESULTS_A_TEST, 1));
      told("revised, results/s", results / revised);
      load(archive);
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  private static void load(Archive archive) {
    double[] loads = new double[5];
    for (int i = 0; i < loads.length; i++) {
      loads[i] = seconds(archive::snapshot);
    }
    told("loaded first, s", loads[0]);
    Arrays.sort(loads);
    told("loaded, median of five, s", loads[2]);
  }

  private static void told(String what, double figure) {
    System.out.printf(Locale.ROOT, "%-28s %12.2f%n", what, figure);
  }

  private static double seconds(Runnable work) {
    long start = System.nanoTime();
    work.run();
    return (System.nanoTime() - start) / 1e9;
  }
}
