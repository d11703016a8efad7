package org.griplore.query.profile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.griplore.query.answer.Missing;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.discipline.Difference;
import org.griplore.query.discipline.Network;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.evidence.Ranking;
import org.griplore.query.network.Estimate;
import org.griplore.query.network.VarianceMethod;
import org.griplore.query.question.QueryContext;
import org.griplore.query.statistics.Interval;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.TestDate;

/** Gathers what disciplines say of models, under one filter. */
final class Profiler {
  private final QueryContext context;
  private final Evidence evidence;
  private final Filter filter;
  private final VarianceMethod method;
  private final Exclusions excluded = new Exclusions();
  private final Citations citations;

  Profiler(QueryContext context, Evidence evidence, Filter filter, VarianceMethod method) {
    this.context = context;
    this.evidence = evidence;
    this.filter = filter;
    this.method = method;
    this.citations = new Citations(evidence);
  }

  Exclusions excluded() {
    return excluded;
  }

  Citations citations() {
    return citations;
  }

  /** Disciplines that occur, as the catalogue orders them. */
  static List<String> disciplines(QueryContext context, Evidence evidence) {
    return context.catalogue().all().stream()
        .map(Discipline::key)
        .filter(key -> evidence.discipline(key) >= 0)
        .toList();
  }

  /** What one discipline says of each of the models that it knows, in their order. */
  List<ProfileRow> rows(String discipline, List<Integer> models) {
    int position = evidence.discipline(discipline);
    List<ProfileRow> rows = new ArrayList<>();
    if (position < 0) {
      return rows;
    }
    Ranking ranking = evidence.ranking(position);
    if (models.stream().allMatch(model -> ranking.rowsOfModel().count(model) == 0)) {
      return rows;
    }
    Optional<Network> network =
        discipline.equals("overall")
            ? Optional.empty()
            : context.networks().of(evidence, discipline, filter, method);
    for (int model : models) {
      List<ProfileResult> results = results(ranking, model);
      if (!results.isEmpty()) {
        rows.add(row(model, discipline, results, network));
      }
    }
    return rows;
  }

  private List<ProfileResult> results(Ranking ranking, int model) {
    List<ProfileResult> results = new ArrayList<>();
    for (int i = ranking.rowsOfModel().from(model); i < ranking.rowsOfModel().to(model); i++) {
      int row = ranking.rowsOfModel().rows()[i];
      int entry = evidence.results().entry()[ranking.result(row)];
      Optional<String> reason = filter.reasonAgainstResult(ranking.result(row));
      if (reason.isPresent()) {
        excluded.add(reason.get());
      } else {
        results.add(result(ranking, row, entry));
      }
    }
    return results;
  }

  private ProfileResult result(Ranking ranking, int row, int entry) {
    int result = ranking.result(row);
    TestRecord test = evidence.tests().get(evidence.entries().test()[entry]);
    TestDate date = test.details().date();
    double value = evidence.results().value()[result];
    int unit = evidence.results().unit()[result];
    return new ProfileResult(
        test.key(),
        date == null ? null : date.text(),
        evidence.sizeOf(entry),
        Double.isNaN(value) ? null : (Double) value,
        unit < 0 ? null : evidence.units().get(unit),
        ranking.place(row) == 0 ? null : (Integer) ranking.place(row),
        ranking.field(row),
        ranking.basis(row).key(),
        citations.citeEntry(entry),
        evidence.results().id()[result]);
  }

  private ProfileRow row(
      int model, String discipline, List<ProfileResult> results, Optional<Network> network) {
    Set<String> tests = new HashSet<>();
    results.forEach(result -> tests.add(result.test()));
    int[] places =
        results.stream()
            .map(ProfileResult::place)
            .filter(Objects::nonNull)
            .mapToInt(place -> place)
            .sorted()
            .toArray();
    int half = places.length / 2;
    int[] years =
        results.stream()
            .map(ProfileResult::date)
            .filter(Objects::nonNull)
            .mapToInt(date -> new TestDate(date).year())
            .sorted()
            .toArray();
    Optional<Estimate> effect = network.flatMap(net -> net.effect(model));
    ComparisonScale measure = network.map(Network::measure).orElse(null);
    Double value = effect.map(Estimate::value).orElse(null);
    Double se = effect.map(Estimate::se).map(Missing::orNull).orElse(null);
    Optional<Interval> interval = effect.flatMap(e -> e.interval(Difference.LEVEL));
    return new ProfileRow(
        evidence.models().get(model).name(),
        discipline,
        value == null ? null : measure.shown(value),
        value == null ? null : measure.shownSe(value, se),
        interval.map(i -> measure.shown(i.low())).orElse(null),
        interval.map(i -> measure.shown(i.high())).orElse(null),
        value == null ? null : measure.shownUnit(),
        value == null ? null : measure.log(value),
        value != null && measure.isRatio() ? se : null,
        tests.size(),
        places.length == 0 ? null : (Integer) places[0],
        places.length == 0
            ? null
            : (Double)
                (places.length % 2 == 1 ? places[half] : (places[half - 1] + places[half]) / 2.0),
        years.length == 0 ? null : (Integer) years[0],
        years.length == 0 ? null : (Integer) years[years.length - 1],
        List.copyOf(results));
  }
}
