package org.griplore.query.table;

import java.util.List;
import java.util.Map;

/**
 * A tyre of a comparison table.
 *
 * @param model its full name
 * @param role why it is there: {@code asked}, {@code predecessor}, {@code successor}, {@code rival}
 *     or {@code reference}
 * @param figures its cells by catalogue key
 * @param total its weighted total; null when no weights were given or too little is known
 * @param footnotes numbers of the notes on the tyre as a whole
 */
public record TableRow(
    String model,
    String role,
    Map<String, ComparedFigure> figures,
    WeightedTotal total,
    List<Integer> footnotes) {}
