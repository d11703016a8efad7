package org.griplore.ingest.forms;

import java.util.Locale;
import java.util.stream.Collectors;
import org.griplore.ingest.names.Candidate;
import org.griplore.ingest.names.NameReconciler.Settled;
import org.griplore.store.archive.NameTaken;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.NameKey;

/**
 * A written name, settled: says so when something was assumed or is new. A name that the user
 * decided on is never asked about again.
 *
 * @param kept the name under which what stands there is kept
 * @param model the model it means
 */
record SettledName(String kept, String model) {
  static SettledName of(String written, Cell cell, SourceContext context) {
    Settled settled = context.names().settle(written);
    if (settled instanceof Settled.Decided decided) {
      String kept = kept(written, decided.otherwise(), context);
      return new SettledName(kept, decided.model());
    }
    if (settled instanceof Settled.Assumed assumed) {
      assumed(written, assumed, cell, context);
    } else if (settled instanceof Settled.New added) {
      added(written, added, cell, context);
    }
    return new SettledName(kept(written, settled, context), settled.model());
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
    String near =
        added.nearest().stream()
            .map(c -> c.model() + " (" + c.reason() + ")")
            .collect(Collectors.joining(", "));
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.NEW_NAME,
                cell,
                written,
                near.isEmpty()
                    ? "a model that the archive knows"
                    : "a model that the archive knows; the nearest: " + near,
                remedy(written, added.nearest().isEmpty() ? null : added.nearest().get(0))));
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
