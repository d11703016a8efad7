package org.griplore.ingest.forms;

import java.util.Locale;
import java.util.stream.Collectors;
import org.griplore.ingest.names.NameReconciler;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;

/** Settles a written name and says so when something was assumed or is new. */
final class SettledName {
  private SettledName() {}

  static String of(String written, Cell cell, SourceContext context) {
    NameReconciler.Settled settled = context.names().settle(written);
    if (settled instanceof NameReconciler.Settled.Assumed assumed) {
      context
          .receiver()
          .finding(
              new Finding(
                  Finding.Kind.ASSUMED,
                  cell,
                  written,
                  String.format(
                      Locale.ROOT, "taken as %s (%s)", assumed.model(), assumed.by().reason()),
                  "give it as an alias in the lineage table to say so, or correct the name"));
    } else if (settled instanceof NameReconciler.Settled.New added) {
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
                  "add a lineage table with this model, or with this name as an alias"));
    }
    return settled.model();
  }
}
