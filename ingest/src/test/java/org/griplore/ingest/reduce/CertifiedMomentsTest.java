package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.griplore.ingest.reduce.sample.Moments;
import org.griplore.store.OutsideData;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/** Mean, standard deviation and one-way layout against NIST/ITL StRD certified values. */
class CertifiedMomentsTest {
  /** Of the agreeing digits; what the data themselves lose in binary is less than asked for. */
  private static double digits(double computed, double certified) {
    return computed == certified ? 15 : -Math.log10(Math.abs(computed / certified - 1));
  }

  /**
   * NumAcc4, by its construction: 10000000.2, then 10000000.1 and 10000000.3 by turns, 1001 values.
   * In binary the data themselves agree to nine digits of their deviation only.
   */
  @Test
  void numAcc4() {
    double[] y = new double[1001];
    for (int i = 0; i < y.length; i++) {
      y[i] = i == 0 ? 10000000.2 : i % 2 == 1 ? 10000000.1 : 10000000.3;
    }
    Moments moments = Moments.of(y);
    assertThat(digits(moments.mean(), 10000000.2)).isGreaterThan(14);
    assertThat(digits(moments.deviation(), 0.1)).isGreaterThan(8);
  }

  /**
   * SmLs06, by its construction: nine groups of 2001 about 1000000.4, .3, .5, .3 ...; F 2001,
   * residual standard deviation 0.1. In binary the data agree to about nine digits.
   */
  @Test
  void smLs06() {
    List<List<Double>> groups = new ArrayList<>();
    for (int g = 0; g < 9; g++) {
      int middle = g == 0 ? 4 : g % 2 == 1 ? 3 : 5;
      List<Double> group = new ArrayList<>();
      for (int i = 0; i < 2001; i++) {
        int tenth = i == 0 ? middle : i % 2 == 1 ? middle - 1 : middle + 1;
        group.add(Double.valueOf("1000000." + tenth));
      }
      groups.add(group);
    }
    SetRepeatability layout = SetRepeatability.of(groups);
    assertThat(digits(layout.ratioOfVariances(), 2001)).isGreaterThan(8);
    assertThat(digits(layout.deviation(), 0.1)).isGreaterThan(8);
    assertThat(layout.freedomBetween() * layout.msBetween()).isCloseTo(160.08, within(1e-5));
  }

  /** Michelso; the data are read where they are present. */
  @Test
  void michelso() throws IOException {
    double[] y = column("i1_Michelso").mapToDouble(d -> d).toArray();
    Moments moments = Moments.of(y);
    assertThat(digits(moments.mean(), 299.8524)).isGreaterThan(13);
    assertThat(digits(moments.deviation(), 0.0790105478190518)).isGreaterThan(12);
  }

  private static Stream<Double> column(String folder) throws IOException {
    Path file =
        OutsideData.folder("reference/" + folder).map(at -> at.resolve("data.csv")).orElse(null);
    if (file == null || !Files.exists(file)) {
      Assumptions.abort("no " + folder + ": certified data are not here, nothing was checked");
    }
    return Files.readAllLines(file).stream().skip(1).map(Double::valueOf);
  }
}
