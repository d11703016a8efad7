package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DisjointSetsTest {
  @Test
  void aSetIsKnownByItsSmallestNumberHoweverItWasJoined() {
    DisjointSets sets = new DisjointSets(6);
    sets.join(5, 3);
    sets.join(4, 5);
    sets.join(1, 4);
    assertThat(sets.of(5)).isEqualTo(1);
    assertThat(sets.of(3)).isEqualTo(1);
    assertThat(sets.of(0)).isZero();
    assertThat(sets.of(2)).isEqualTo(2);
  }
}
