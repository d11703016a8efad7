package org.griplore.ingest.reduce.run;

import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Where in a log a run stands, in words, and the refusals that name it. */
public final class RunPosition {
  private RunPosition() {}

  public static String of(LoggedRun run) {
    StringBuilder place = new StringBuilder("sequence ").append(run.sequence());
    place.append(", ").append(run.model());
    if (run.run() != null) {
      place.append(", run ").append(run.run());
    }
    if (run.cell() != null) {
      place.append(" (").append(run.cell().place()).append(')');
    }
    return place.toString();
  }

  public static Refusal refusal(String where, String found, String expected) {
    return new Refusal(
        where + ": found " + found + ", expected " + expected, new Problem(where, found, expected));
  }

  /** The value, when it is a positive finite number. */
  public static double positive(double value, String what, String where) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw refusal(where, what + " " + value, "a " + what + " above 0");
    }
    return value;
  }

  /** The value, when it is a finite number that is not negative. */
  public static double notNegative(double value, String what, String where) {
    if (!(value >= 0) || !Double.isFinite(value)) {
      throw refusal(where, what + " " + value, "a " + what + " of 0 or more");
    }
    return value;
  }

  public static double finite(double value, String what, String where) {
    if (!Double.isFinite(value)) {
      throw refusal(where, what + " " + value, "a number");
    }
    return value;
  }
}
