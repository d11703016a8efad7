package org.griplore.ingest.forms;

import java.util.List;
import org.griplore.store.vocabulary.Cell;

/**
 * A column as it was understood, for showing before anything is written.
 *
 * @param number its number in its table, from 1
 * @param header its header; empty where it has none
 * @param cell where the header stands; null where it has none
 * @param meaning what it was taken for, in a few words: {@code wet-braking}, {@code place,
 *     overall}, {@code not understood}
 * @param unit the unit of its figures, or {@code places}; empty where it holds no figures
 * @param basis how that is known: {@code as was said}, {@code by its header}, or empty
 * @param samples up to three of its texts, as found
 */
public record UnderstoodColumn(
    int number,
    String header,
    Cell cell,
    String meaning,
    String unit,
    String basis,
    List<String> samples) {
  /** Keeps the list from changing. */
  public UnderstoodColumn {
    samples = List.copyOf(samples);
  }
}
