package org.griplore.store.tyre;

import java.time.LocalDate;
import java.util.Optional;

/** The two editions of the tyre label; one letter means different things in them. */
public enum LabelEra {
  /** Regulation (EC) No 1222/2009, amended by (EU) 228/2011 and 1235/2011. */
  ERA_2012("Regulation (EC) 1222/2009", LocalDate.of(2012, 11, 1)),
  /** Regulation (EU) 2020/740. */
  ERA_2021("Regulation (EU) 2020/740", LocalDate.of(2021, 5, 1));

  private final String regulation;
  private final LocalDate from;

  LabelEra(String regulation, LocalDate from) {
    this.regulation = regulation;
    this.from = from;
  }

  /** The regulation's number. */
  public String regulation() {
    return regulation;
  }

  /** The first day on which it applied. */
  public LocalDate from() {
    return from;
  }

  /** The era in force on a day; empty before 1 November 2012. */
  public static Optional<LabelEra> on(LocalDate day) {
    if (!day.isBefore(ERA_2021.from)) {
      return Optional.of(ERA_2021);
    }
    return day.isBefore(ERA_2012.from) ? Optional.empty() : Optional.of(ERA_2012);
  }
}
