package org.griplore.ingest.forms;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.griplore.ingest.names.FieldNames;
import org.griplore.ingest.names.NameReconciler.Settled;
import org.griplore.store.archive.NameTaken;
import org.griplore.store.names.Candidate;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.NameKey;

/**
 * A written name, settled: says so when something was assumed or is new. A name that the user
 * decided on is never asked about again.
 *
 * @param kept the name under which what stands there is kept
 * @param model the model it means
 * @param assumed whether it is only taken for a misspelling of the model's name
 */
record SettledName(String kept, String model, boolean assumed) {
  /** A name of which it is not known what stands beside it. */
  static SettledName of(String written, Cell cell, SourceContext context) {
    return of(written, cell, context.names().settle(written), context);
  }

  /** A name in a field whose other names are known. */
  static SettledName of(String written, Cell cell, FieldNames field, SourceContext context) {
    return of(written, cell, field.settle(written), context);
  }

  private static SettledName of(String written, Cell cell, Settled settled, SourceContext context) {
    if (settled instanceof Settled.Decided decided) {
      String kept = kept(written, decided.otherwise(), context);
      return new SettledName(kept, decided.model(), false);
    }
    if (settled instanceof Settled.Assumed assumed) {
      assumed(written, assumed, cell, context);
    } else if (settled instanceof Settled.New added) {
      added(written, added, cell, context);
    }
    return new SettledName(
        kept(written, settled, context), settled.model(), settled instanceof Settled.Assumed);
  }

  /**
   * A name that is not the model's own is kept, so that a decision on it can reach what it heads.
   */
  private static String kept(String written, Settled settled, SourceContext context) {
    String model = settled.model();
    String kept = context.names().kept(written);
    if (NameKey.of(written).equals(NameKey.of(model))) {
      return settled instanceof Settled.New ? kept : model;
    }
    boolean assumed = settled instanceof Settled.Assumed;
    context.receiver().name(kept, model, assumed ? NameTaken.ASSUMED : NameTaken.KNOWN);
    return kept;
  }

  private static void assumed(
      String written, Settled.Assumed assumed, Cell cell, SourceContext context) {
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.ASSUMED,
                cell,
                written,
                String.format(
                    Locale.ROOT, "taken as %s (%s)", assumed.model(), assumed.by().reason()),
                remedy(written, assumed.by())));
  }

  private static void added(String written, Settled.New added, Cell cell, SourceContext context) {
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.NEW_NAME,
                cell,
                written,
                "a model that the archive knows" + near(added),
                remedy(written, added.nearest().isEmpty() ? null : added.nearest().get(0))));
  }

  private static String near(Settled.New added) {
    if (added.parted() != null) {
      return "; it is like "
          + added.parted().model()
          + " ("
          + added.parted().reason()
          + "), but both stand in this test: taken for two tyres";
    }
    return added.nearest().isEmpty()
        ? ""
        : added.nearest().stream()
            .map(c -> c.model() + " (" + c.reason() + ")")
            .collect(Collectors.joining(", ", "; the nearest: ", ""));
  }

  /** Says that a name was assumed to be a misspelling, but stands in a test with the other. */
  static Finding parted(String name, String other, String model, String test, Cell cell) {
    return new Finding(
        Finding.Kind.CONFLICT,
        cell,
        name,
        "each tyre by one name in a test; \""
            + name
            + "\" is like "
            + model
            + ", but test "
            + test
            + " holds \""
            + other
            + "\" too: taken for two tyres, here and everywhere",
        remedy(name, new Candidate(model, 0, List.of())));
  }

  private static String remedy(String written, Candidate nearest) {
    String name = "`griplore settle \"" + written + "\"";
    return "decide it once: "
        + name
        + " --same-as "
        + (nearest == null ? "MODEL" : "\"" + nearest.model() + "\"")
        + "`, or `--new` for a model of its own; or add a lineage table that lists it";
  }
}
