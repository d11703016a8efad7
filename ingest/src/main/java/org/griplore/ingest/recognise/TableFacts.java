package org.griplore.ingest.recognise;

import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.Unit;

/**
 * What the columns of one table have in common when their figures are read.
 *
 * @param decimal the table's decimal mark
 * @param units units stated beside the table, by discipline
 * @param forAll a unit stated beside the table for all its columns; null when there is none
 * @param places the overall place by row; 0 where there is none
 * @param marks how the table's school marks go with the places, as {@link #withPlaces} tells: of
 *     the overall mark where there is one, else of all marks together
 * @param marksExplained whether a text beside the table says that 1 is the best mark
 * @param otherMarks whether a column of the table says that it holds school marks
 */
record TableFacts(
    DecimalMark decimal,
    Map<String, Unit> units,
    Unit forAll,
    int[] places,
    int marks,
    boolean marksExplained,
    boolean otherMarks) {
  /**
   * How columns of values go with the overall places: +1 when they rise from the best place to the
   * worst, -1 when they fall, 0 when that cannot be said.
   */
  static int withPlaces(int[] places, List<Double[]> columns) {
    int rise = 0;
    int fall = 0;
    for (Double[] values : columns) {
      for (int i = 0; i < values.length; i++) {
        for (int j = 0; j < values.length; j++) {
          if (values[i] != null && values[j] != null && places[i] > 0 && places[i] < places[j]) {
            rise += values[i] < values[j] ? 1 : 0;
            fall += values[i] > values[j] ? 1 : 0;
          }
        }
      }
    }
    return rise + fall < 3 ? 0 : rise >= 2 * fall ? 1 : fall >= 2 * rise ? -1 : 0;
  }
}
