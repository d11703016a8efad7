package org.griplore.ui.web;

import org.griplore.query.answer.Column;

/**
 * Where the figures of a table lead: to the results behind them.
 *
 * @param <R> what a row is about
 */
@FunctionalInterface
interface EvidenceLink<R> {
  /** The address behind a cell; null where its column's format says all there is. */
  String address(Column<R> column, R row);

  /** Leads nowhere but where formats lead. */
  static <R> EvidenceLink<R> none() {
    return (column, row) -> null;
  }
}
