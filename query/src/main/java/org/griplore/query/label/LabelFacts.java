package org.griplore.query.label;

import org.griplore.store.tyre.SizePrefix;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.SeasonClass;

/**
 * What a label class depends on beside the figure.
 *
 * @param size null when not known
 * @param season null when not known
 * @param date of the test, ISO 8601 as exactly as known; null when not known
 */
record LabelFacts(TyreSize size, SeasonClass season, String date) {
  static LabelFacts of(String size, SeasonClass season, String date) {
    return new LabelFacts(size == null ? null : TyreSize.find(size).orElse(null), season, date);
  }

  /** Why it is not known to be a car tyre (class C1); null when it is one. */
  String whyNoCarTyre() {
    if (size == null) {
      return "the size is not known, and with it not the class of tyre (C1, C2, C3)";
    }
    return size.commercial() || size.prefix() == SizePrefix.LIGHT_TRUCK
        ? "a van's tyre may be C2, whose limits differ; only car tyres (C1) are classed here"
        : size.prefix() == SizePrefix.TEMPORARY ? "a temporary spare has no label" : null;
  }
}
