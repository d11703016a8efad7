package org.griplore.ingest.reduce;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The reference that a candidate is compared with at its place.
 *
 * @param basis how it was found
 * @param shares the measurements it is made of, with weights that add up to 1; none for ABSENT
 * @param reach places between the candidate and the single measurement of ONE_SIDED, negative when
 *     that was measured earlier; 0 otherwise
 */
public record LocalReference(Basis basis, List<Share> shares, int reach) {
  /** How a reference was found. */
  public enum Basis {
    /** Between its measurements before and after, linear in position. */
    INTERPOLATED,
    /** The nearest measurement, as there is none on the other side. */
    ONE_SIDED,
    /** The mean of all measurements, as no drift was significant (method A only). */
    STEADY,
    /** There was no reference. */
    ABSENT
  }

  /** A measurement of the reference and its weight. */
  public record Share(SetStatistics set, double weight) {}

  /** No reference in the log. */
  public static final LocalReference NONE = new LocalReference(Basis.ABSENT, List.of(), 0);

  /** Keeps the list from changing. */
  public LocalReference {
    shares = List.copyOf(shares);
  }

  /**
   * The reference at a place of a cycle: R1 + (k / (n + 1)) (R2 - R1) with k places from the
   * opening to the candidate and n + 1 from the opening to the closing reference (UN Regulation No.
   * 109 annex 10, table 1, read in source, is its case of one, two and three candidates). Linear in
   * position, not in clock time.
   */
  public static LocalReference at(int position, ReferenceCycle cycle) {
    SetStatistics before = cycle.opening();
    SetStatistics after = cycle.closing();
    if (before == null && after == null) {
      return NONE;
    }
    if (before == null || after == null) {
      SetStatistics only = before == null ? after : before;
      return new LocalReference(
          Basis.ONE_SIDED, List.of(new Share(only, 1)), only.position() - position);
    }
    double share = (double) (position - before.position()) / (after.position() - before.position());
    return new LocalReference(
        Basis.INTERPOLATED, List.of(new Share(before, 1 - share), new Share(after, share)), 0);
  }

  /** The mean of all measurements. */
  public static LocalReference steady(List<SetStatistics> references) {
    return new LocalReference(
        Basis.STEADY,
        references.stream().map(set -> new Share(set, 1.0 / references.size())).toList(),
        0);
  }

  /** The reference's figure; null for ABSENT. */
  public Double value() {
    return shares.isEmpty()
        ? null
        : (Double) shares.stream().mapToDouble(s -> s.weight() * s.set().mean()).sum();
  }

  /** How it is made up, for a page. */
  public String words() {
    return switch (basis) {
      case ABSENT -> "no reference in the log";
      case STEADY -> "mean of all " + shares.size() + " reference sets, no significant drift";
      case ONE_SIDED ->
          "nearest reference set only (sequence " + shares.get(0).set().sequence() + ")";
      case INTERPOLATED ->
          "interpolated by position: "
              + shares.stream()
                  .map(
                      s ->
                          String.format(
                              Locale.ROOT, "%.3f of sequence %d", s.weight(), s.set().sequence()))
                  .collect(Collectors.joining(" + "));
    };
  }
}
