package org.griplore.query.compare;

import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.discipline.StrongestRemoval;

/** What is told of the removals that move a figure most. */
final class HangsOnColumns {
  static final List<Column<StrongestRemoval>> COLUMNS =
      List.of(
          Column.of("kind", "What", Format.TEXT, StrongestRemoval::kind)
              .means("Whether a test, a source or a model is left out."),
          Column.of("name", "Without", Format.TEXT, StrongestRemoval::name)
              .means("The test's key, or the name of the source or model."),
          Column.number("without", "Figure", Format.DELTA, 1, StrongestRemoval::without)
              .means("The figure without it; missing where nothing would be left."),
          Column.number("change", "Change", Format.DELTA, 1, StrongestRemoval::change)
              .means("How far the figure would move."),
          Column.number("low", "from", Format.DELTA, 1, StrongestRemoval::low)
              .means("Lower end of the 95 % interval without it."),
          Column.number("high", "to", Format.DELTA, 1, StrongestRemoval::high)
              .means("Upper end of that interval."),
          Column.of(
                  "sentenceChanges",
                  "Reads differently",
                  Format.FLAG,
                  StrongestRemoval::sentenceChanges)
              .means("Whether it would no longer read as better, worse or not told from zero."));

  private HangsOnColumns() {}
}
