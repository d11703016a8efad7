package org.griplore.query.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.griplore.query.statistics.Tails;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StudentTableTest {
  @ParameterizedTest
  @ValueSource(doubles = {1, 1.7, 5, 45.3, 400, 1e5})
  void theTableIsTheDistribution(double df) {
    StudentTable table = new StudentTable(df);
    for (double t = -20; t <= 20; t += 0.0173) {
      double tail = Tails.studentTwoSided(t, df) / 2;
      assertThat(table.below(t)).isCloseTo(t < 0 ? tail : 1 - tail, within(1e-7));
    }
  }
}
