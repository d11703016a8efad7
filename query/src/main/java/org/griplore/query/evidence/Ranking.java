package org.griplore.query.evidence;

import java.util.Arrays;
import java.util.BitSet;
import java.util.function.IntUnaryOperator;
import org.griplore.query.ranking.Places;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Unit;

/**
 * The places of all entries in one discipline, test by test, by standard competition ranking (equal
 * results share the better place and the next place is skipped: 1, 2, 2, 4). A published place
 * counts before a computed one. Rows lie side by side by test.
 *
 * <p>A model that a report gives several results in one size (sets of the day) has one place: that
 * of their mean value, or where places alone are published their mean place. What another report of
 * the same test tells again does not count.
 *
 * <p>The field of a test is the number of entries with a result in the discipline, or the highest
 * published place where that is larger (a report that lists only some of those it ranked).
 */
public final class Ranking {
  /** How a place was come by. */
  public enum Basis {
    /** As the report gives it. */
    PUBLISHED("published"),
    /** Ranked here by published values or totals. */
    COMPUTED("computed"),
    /** No place: results in different units. */
    NONE("none"),
    /** No place of its own: a further result of a model in a report, averaged with its others. */
    REPEATED("repeated"),
    /** No place: another report of the test has told it. */
    TOLD("told");

    private final String key;

    Basis(String key) {
      this.key = key;
    }

    /** The word used in answers. */
    public String key() {
      return key;
    }
  }

  private static final Basis[] BASES = Basis.values();

  private final int[] result;
  private final int[] place;
  private final int[] field;
  private final boolean[] tied;
  private final byte[] basis;
  private final int[] begin;
  private final int[] end;
  private final Postings rowsOfModel;
  private final BitSet entries = new BitSet();

  private Ranking(int[] result, Evidence evidence) {
    this.result = result;
    this.place = new int[result.length];
    this.field = new int[result.length];
    this.tied = new boolean[result.length];
    this.basis = new byte[result.length];
    this.begin = new int[result.length];
    this.end = new int[result.length];
    int[] model = new int[result.length];
    for (int i = 0; i < result.length; i++) {
      int entry = evidence.results().entry()[result[i]];
      model[i] = evidence.entries().model()[entry];
      entries.set(entry);
    }
    this.rowsOfModel = Postings.of(model, evidence.models().size());
  }

  static Ranking of(Evidence evidence, int discipline) {
    int[] inTestOrder = sortedByTest(evidence, discipline);
    Ranking ranking = new Ranking(inTestOrder, evidence);
    Group group = new Group(evidence, discipline);
    int[] entry = evidence.results().entry();
    int[] test = evidence.entries().test();
    for (int from = 0; from < inTestOrder.length; ) {
      int to = from + 1;
      while (to < inTestOrder.length
          && test[entry[inTestOrder[to]]] == test[entry[inTestOrder[from]]]
          && evidence.series().of(inTestOrder[to]) == evidence.series().of(inTestOrder[from])) {
        to++;
      }
      group.rank(ranking, from, to);
      from = to;
    }
    return ranking;
  }

  private static int[] sortedByTest(Evidence evidence, int discipline) {
    Postings of = evidence.resultsOfDiscipline();
    int[] results = Arrays.copyOfRange(of.rows(), of.from(discipline), of.to(discipline));
    int[] inSeries = sorted(results, evidence.series()::of, evidence.series().count());
    return sorted(
        inSeries,
        result -> evidence.entries().test()[evidence.results().entry()[result]],
        evidence.tests().size());
  }

  private static int[] sorted(int[] results, IntUnaryOperator key, int keys) {
    int[] order = Postings.of(Arrays.stream(results).map(key).toArray(), keys).rows();
    return Arrays.stream(order).map(at -> results[at]).toArray();
  }

  /** Whether an entry has a result in the discipline. */
  public boolean has(int entry) {
    return entries.get(entry);
  }

  /** Number of rows: results in the discipline. */
  public int count() {
    return result.length;
  }

  /** The rows of each model, in the order of the tests. */
  public Postings rowsOfModel() {
    return rowsOfModel;
  }

  /** Position of the row's result in {@link Evidence#results}. */
  public int result(int row) {
    return result[row];
  }

  /**
   * The row of a result of this discipline.
   *
   * @throws IllegalArgumentException when the result is of another discipline
   */
  public int rowOf(int result, Evidence evidence) {
    int model = evidence.entries().model()[evidence.results().entry()[result]];
    for (int i = rowsOfModel.from(model); i < rowsOfModel.to(model); i++) {
      if (this.result[rowsOfModel.rows()[i]] == result) {
        return rowsOfModel.rows()[i];
      }
    }
    throw new IllegalArgumentException("result " + result + " is not ranked here");
  }

  /** The place; 0 when there is none. */
  public int place(int row) {
    return place[row];
  }

  /** How many were ranked in the test. */
  public int field(int row) {
    return field[row];
  }

  /** How many of the field the reports of the row's test name with a result. */
  public int named(int row) {
    int named = 0;
    for (int other = begin[row]; other < end[row]; other++) {
      named += basis(other) != Basis.REPEATED && basis(other) != Basis.TOLD ? 1 : 0;
    }
    return named;
  }

  /** Whether another entry of the test has the same place. */
  public boolean tied(int row) {
    return tied[row];
  }

  /** The first row of the row's test: the same for all of a test. */
  public int testOf(int row) {
    return begin[row];
  }

  /** The places of all rows of the row's test, 0 for those without. */
  public int[] placesInTestOf(int row) {
    return Arrays.copyOfRange(place, begin[row], end[row]);
  }

  /** How the place was come by. */
  public Basis basis(int row) {
    return BASES[basis[row]];
  }

  /** Ranks the rows of one test; keeps its buffers from test to test. */
  private static final class Group {
    private final Evidence evidence;
    private final Direction[] directions;

    /** Row of the model's first result in the test, from the test's first row; itself if first. */
    private int[] leader = new int[0];

    private double[] values = new double[0];
    private int[] places = new int[0];

    Group(Evidence evidence, int discipline) {
      this.evidence = evidence;
      this.directions = directions(evidence, discipline);
    }

    private static Direction[] directions(Evidence evidence, int discipline) {
      Discipline known = evidence.catalogue().get(evidence.disciplines().get(discipline));
      Direction[] directions = new Direction[evidence.units().size()];
      for (int unit = 0; unit < directions.length; unit++) {
        Unit its = Unit.ofSymbol(evidence.units().get(unit)).orElseThrow();
        directions[unit] = known.accepts(its) ? known.directionOf(its) : known.better();
      }
      return directions;
    }

    void rank(Ranking ranking, int from, int to) {
      boolean repeats = findLeaders(ranking, from, to);
      int highestPlace = 0;
      int ranked = 0;
      int unit = -1;
      boolean oneUnit = true;
      boolean allPublished = true;
      boolean allValued = true;
      for (int row = from; row < to; row++) {
        if (leader[row - from] != row - from) {
          continue;
        }
        int result = ranking.result[row];
        int published = evidence.results().place()[result];
        int its = evidence.results().unit()[result];
        highestPlace = Math.max(highestPlace, published);
        allPublished &= published > 0;
        allValued &= its >= 0;
        if (its >= 0) {
          oneUnit &= unit < 0 || unit == its;
          unit = its;
        }
        ranked++;
      }
      boolean averaged = repeats && allValued && oneUnit;
      boolean computable = oneUnit && unit >= 0 && (!allPublished || averaged);
      if (computable) {
        compute(ranking, from, to, unit);
      }
      int field = Math.max(ranked, highestPlace);
      for (int row = from; row < to; row++) {
        int published = evidence.results().place()[ranking.result[row]];
        ranking.field[row] = field;
        ranking.begin[row] = from;
        ranking.end[row] = to;
        if (leader[row - from] != row - from) {
          set(ranking, row, 0, isRepeat(ranking, from, row) ? Basis.REPEATED : Basis.TOLD);
        } else if (published > 0 && !averaged) {
          set(
              ranking,
              row,
              repeats ? meanPlace(ranking, from, to, row) : published,
              Basis.PUBLISHED);
        } else if (computable && !Double.isNaN(values[row - from])) {
          set(ranking, row, places[row - from], Basis.COMPUTED);
        } else {
          set(ranking, row, 0, Basis.NONE);
        }
      }
      markTied(ranking, from, to);
    }

    /**
     * The first result of each row's tyre: a model in its size, state and version, measured alike.
     * Gives whether a report has a model more than once: sets of the day, where a second report of
     * the test tells what the first has told.
     */
    private boolean findLeaders(Ranking ranking, int from, int to) {
      if (leader.length < to - from) {
        leader = new int[to - from];
        values = new double[to - from];
        places = new int[to - from];
      }
      int[] entry = evidence.results().entry();
      boolean repeats = false;
      for (int row = from; row < to; row++) {
        int mine = entry[ranking.result[row]];
        int first = row;
        for (int other = from; other < row && first == row; other++) {
          int earlier = entry[ranking.result[other]];
          if (evidence.isSameTyre(mine, earlier)
              && evidence.results().circumstance()[ranking.result[row]]
                  == evidence.results().circumstance()[ranking.result[other]]) {
            first = other;
          }
        }
        leader[row - from] = first - from;
        repeats |= first != row && isRepeat(ranking, from, row);
      }
      return repeats;
    }

    /** Whether a row stands in the same report as the first result of its model. */
    private boolean isRepeat(Ranking ranking, int from, int row) {
      int[] entry = evidence.results().entry();
      int[] report = evidence.entries().report();
      return report[entry[ranking.result[row]]]
          == report[entry[ranking.result[from + leader[row - from]]]];
    }

    /** Ranks each model's mean over its results in a report, those in another unit left aside. */
    private void compute(Ranking ranking, int from, int to, int unit) {
      int[] count = new int[to - from];
      Arrays.fill(values, 0, to - from, Double.NaN);
      for (int row = from; row < to; row++) {
        int result = ranking.result[row];
        int first = leader[row - from];
        double value = evidence.results().value()[result];
        if (evidence.results().unit()[result] == unit
            && !Double.isNaN(value)
            && (first == row - from || isRepeat(ranking, from, row))) {
          count[first]++;
          values[first] =
              count[first] == 1 ? value : values[first] + (value - values[first]) / count[first];
        }
      }
      Places.rank(values, to - from, directions[unit], places);
    }

    /** The mean of the places published for a model's results, a half counting as the worse. */
    private int meanPlace(Ranking ranking, int from, int to, int row) {
      double sum = 0;
      int count = 0;
      for (int other = row; other < to; other++) {
        int published = evidence.results().place()[ranking.result[other]];
        if (leader[other - from] == row - from && published > 0 && isRepeat(ranking, from, other)) {
          sum += published;
          count++;
        }
      }
      return (int) Math.floor(sum / count + 0.5);
    }

    private static void set(Ranking ranking, int row, int place, Basis basis) {
      ranking.place[row] = place;
      ranking.basis[row] = (byte) basis.ordinal();
    }

    private static void markTied(Ranking ranking, int from, int to) {
      for (int row = from; row < to; row++) {
        for (int other = from; other < to && ranking.place[row] > 0; other++) {
          if (other != row && ranking.place[other] == ranking.place[row]) {
            ranking.tied[row] = true;
          }
        }
      }
    }
  }
}
