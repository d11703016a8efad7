package org.griplore.store.archive;

import java.util.List;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.Step;

/**
 * Where one result comes from.
 *
 * @param result database number
 * @param revision the reading it stands in (which may be superseded)
 * @param test the test's key
 * @param model the model's full name
 * @param nameFound the name as written in the source; null when it stands nowhere
 * @param discipline catalogue key
 * @param value in {@code unit}; null when only a place is known
 * @param unit symbol; null without a value
 * @param spread null when not stated
 * @param runs null when not stated
 * @param place null when not published
 * @param cells where each part stands, with the text as found
 * @param rule what was done to the text, in words; empty when nothing was
 * @param steps what was done one by one; empty where reading the number was all, or where the
 *     reading is older than the keeping of steps
 */
public record ResultOrigin(
    long result,
    Revision revision,
    String test,
    String model,
    String nameFound,
    String discipline,
    Double value,
    String unit,
    Double spread,
    Integer runs,
    Integer place,
    ResultCells cells,
    String rule,
    List<Step> steps) {
  /** Keeps the list from changing. */
  public ResultOrigin {
    steps = List.copyOf(steps);
  }
}
