package org.griplore.ui.web.record;

import java.util.List;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.label.LabelClaim;
import org.griplore.ui.web.page.TableView;

/**
 * What the tyre label would say of a test's figures.
 *
 * @param classes those that have a class; null when none has
 * @param said what they hold for, and why others have none, a sentence each
 */
public record LabelsView(TableView classes, List<String> said) {
  public static LabelsView of(List<LabelClaim> claims, Inquiry asked) {
    List<LabelClaim> classed = claims.stream().filter(LabelClaim::hasClass).toList();
    return new LabelsView(
        classed.isEmpty() ? null : TableView.of(LabelClaim.COLUMNS, classed, asked),
        claims.stream().map(LabelsView::said).distinct().toList());
  }

  private static String said(LabelClaim claim) {
    return (claim.hasClass() ? "The class of the " : "No class for the ")
        + claim.what()
        + ": "
        + claim.said()
        + "."
        + (claim.hasClass() ? " " + claim.method() + "." : "");
  }
}
