package org.griplore.ingest.recognise;

import java.util.List;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;

/**
 * A figure that was read.
 *
 * @param value in {@code unit}
 * @param unit the unit it is kept in
 * @param given the unit it was stated in, or assumed to be in
 * @param cell where it stands
 * @param rule what was done to it, in words; empty when nothing was
 * @param steps what was done one by one; empty where reading the number was all
 */
public record ReadFigure(
    double value, Unit unit, Unit given, GridCell cell, String rule, List<Step> steps) {}
