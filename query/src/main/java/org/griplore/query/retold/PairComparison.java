package org.griplore.query.retold;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.griplore.query.retold.FigureMatch.CellPair;
import org.griplore.query.retold.ToldTwice.DifferingCell;
import org.griplore.query.retold.ToldTwice.Likeness;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Scale;
import org.griplore.store.vocabulary.Unit;

/** Whether two tests are one, figure by figure. */
final class PairComparison {
  /** Alike by chance once in 4,096 pairs: what a pair must say at least. */
  private static final double FEWEST_BITS = 12;

  /** Where all figures are coarse, ratings in whole points say, more is asked. */
  private static final double FEWEST_BITS_COARSE = 16;

  private static final double MOST = 2.0 / 3;
  private static final double NEARLY_ALL = 0.85;

  private final Snapshot snapshot;
  private final DisciplineCatalogue catalogue;
  private final TestCells cells;

  PairComparison(Snapshot snapshot, DisciplineCatalogue catalogue, TestCells cells) {
    this.snapshot = snapshot;
    this.catalogue = catalogue;
    this.cells = cells;
  }

  /** What the two tests have in common; empty when they do not look like one. */
  Optional<ToldTwice> of(int first, int second) {
    TestFigures one = cells.of(first);
    TestFigures other = cells.of(second);
    if (!one.couldBe(other)) {
      return Optional.empty();
    }
    Map<Integer, List<CellPair>> pairs = pairs(one, other);
    int common = models(one, pairs);
    if (common < TestPairs.FEWEST) {
      return Optional.empty();
    }
    Map<Integer, FigureMatch> equal = equal(one, other, pairs);
    if (isOne(equal)) {
      return Optional.of(told(first, second, Likeness.EQUAL_FIGURES, common, equal));
    }
    Map<Integer, FigureMatch> proportional = new TreeMap<>();
    pairs.forEach(
        (discipline, of) ->
            proportional(discipline, one, other, of)
                .ifPresent(match -> proportional.put(discipline, match)));
    return isOneByRatios(proportional)
        ? Optional.of(told(first, second, Likeness.PROPORTIONAL_FIGURES, common, proportional))
        : Optional.empty();
  }

  /** What two tests have in common that somebody decided to be one. */
  ToldTwice decided(int first, int second) {
    TestFigures one = cells.of(first);
    Map<Integer, List<CellPair>> pairs = pairs(one, cells.of(second));
    return told(
        first, second, Likeness.DECIDED, models(one, pairs), equal(one, cells.of(second), pairs));
  }

  private static Map<Integer, FigureMatch> equal(
      TestFigures one, TestFigures other, Map<Integer, List<CellPair>> pairs) {
    Map<Integer, FigureMatch> equal = new TreeMap<>();
    pairs.forEach(
        (discipline, of) -> {
          List<CellPair> comparable =
              of.stream().filter(p -> one.isComparable(p.one(), other, p.other())).toList();
          if (!comparable.isEmpty()) {
            equal.put(discipline, FigureMatch.equal(one, other, comparable));
          }
        });
    return equal;
  }

  private static int models(TestFigures one, Map<Integer, List<CellPair>> pairs) {
    return (int)
        pairs.values().stream()
            .flatMap(List::stream)
            .mapToInt(pair -> one.model(pair.one()))
            .distinct()
            .count();
  }

  /** The positions of the figures that both tell, by discipline. */
  private static Map<Integer, List<CellPair>> pairs(TestFigures one, TestFigures other) {
    Map<Integer, List<CellPair>> pairs = new TreeMap<>();
    int j = 0;
    for (int i = 0; i < one.size(); i++) {
      while (j < other.size() && other.key()[j] < one.key()[i]) {
        j++;
      }
      if (j < other.size() && other.key()[j] == one.key()[i]) {
        pairs
            .computeIfAbsent(one.discipline(i), discipline -> new ArrayList<>())
            .add(new CellPair(i, j));
      }
    }
    return pairs;
  }

  private Optional<FigureMatch> proportional(
      int discipline, TestFigures one, TestFigures other, List<CellPair> pairs) {
    Discipline known = catalogue.get(snapshot.disciplines().get(discipline));
    if (pairs.size() < TestPairs.FEWEST || known.scale() != Scale.RATIO) {
      return Optional.empty();
    }
    Optional<Direction> first =
        direction(known, one, pairs.stream().mapToInt(CellPair::one).toArray());
    Optional<Direction> second =
        direction(known, other, pairs.stream().mapToInt(CellPair::other).toArray());
    return first.isEmpty() || second.isEmpty()
        ? Optional.empty()
        : Optional.of(FigureMatch.proportional(one, other, pairs, first.get(), second.get()));
  }

  /** Which way figures in one ratio unit are better; empty where they are not that. */
  private Optional<Direction> direction(Discipline known, TestFigures figures, int[] at) {
    int unit = figures.unit()[at[0]];
    for (int i : at) {
      if (unit < 0 || figures.unit()[i] != unit || !(figures.value()[i] > 0)) {
        return Optional.empty();
      }
    }
    Unit its = Unit.ofSymbol(snapshot.units().get(unit)).orElseThrow();
    return known.accepts(its) && known.scaleOf(its) == Scale.RATIO
        ? Optional.of(known.directionOf(its))
        : Optional.empty();
  }

  private static boolean isOne(Map<Integer, FigureMatch> matches) {
    List<FigureMatch> fine = matches.values().stream().filter(m -> !m.isCoarse()).toList();
    double bits = matches.values().stream().mapToDouble(FigureMatch::bits).sum();
    if (alikeModels(matches) < TestPairs.FEWEST) {
      return false;
    }
    int fineCells = fine.stream().mapToInt(FigureMatch::cells).sum();
    return fineCells >= TestPairs.FEWEST
        ? bits >= FEWEST_BITS && share(fine) >= MOST && share(List.copyOf(matches.values())) > 0.5
        : bits >= FEWEST_BITS_COARSE && share(List.copyOf(matches.values())) >= NEARLY_ALL;
  }

  private static boolean isOneByRatios(Map<Integer, FigureMatch> matches) {
    double bits = matches.values().stream().mapToDouble(FigureMatch::bits).sum();
    return bits >= FEWEST_BITS
        && alikeModels(matches) >= TestPairs.FEWEST
        && share(List.copyOf(matches.values())) >= NEARLY_ALL;
  }

  private static int alikeModels(Map<Integer, FigureMatch> matches) {
    return (int) matches.values().stream().flatMap(m -> m.models().stream()).distinct().count();
  }

  private static double share(List<FigureMatch> matches) {
    int alike = matches.stream().mapToInt(m -> m.models().size()).sum();
    int all = matches.stream().mapToInt(FigureMatch::cells).sum();
    return all == 0 ? 0 : (double) alike / all;
  }

  private ToldTwice told(
      int first, int second, Likeness likeness, int models, Map<Integer, FigureMatch> matches) {
    TestFigures one = cells.of(first);
    TestFigures other = cells.of(second);
    List<DifferingCell> differing = new ArrayList<>();
    int alike = 0;
    int all = 0;
    for (Map.Entry<Integer, FigureMatch> match : matches.entrySet()) {
      alike += match.getValue().models().size();
      all += match.getValue().cells();
      for (CellPair pair : match.getValue().differing()) {
        differing.add(
            new DifferingCell(
                one.model(pair.one()),
                match.getKey(),
                one.result()[pair.one()],
                other.result()[pair.other()]));
      }
    }
    return new ToldTwice(first, second, likeness, models, all, alike, differing);
  }
}
