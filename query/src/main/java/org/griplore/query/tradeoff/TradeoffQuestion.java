package org.griplore.query.tradeoff;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.compare.CompareOptions;
import org.griplore.query.discipline.ModelStep;
import org.griplore.query.discipline.Network;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.network.VarianceMethod;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.query.statistics.ParetoFront;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Refusal;

/** Whether what is gained in one discipline is paid for in another. */
public final class TradeoffQuestion implements Question<TradeoffRow> {
  /** How the two disciplines go together. */
  public static final WholeFigure<Relation> RELATION =
      new WholeFigure<>("relation", "How the two disciplines go together, as correlations.");

  /** The generation steps with both. */
  public static final WholeFigure<List<TradeoffStep>> STEPS =
      new WholeFigure<>("steps", "The generation steps that have an estimate in both disciplines.");

  private static final List<Column<TradeoffRow>> NONE_TOLD =
      TradeoffColumns.of("First discipline", null, "Second discipline", null);

  /** Any will do; the same gives the same chances. */
  private static final long SEED = 1906;

  /** Every pair is compared: more models would take minutes. */
  private static final int MOST_MODELS = 4000;

  @Override
  public String kind() {
    return "tradeoff";
  }

  @Override
  public String purpose() {
    return "Whether a gain in one discipline is paid for in another, and which models escape that";
  }

  @Override
  public String example() {
    return "tradeoff wet-braking rolling-resistance --season summer";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(
        Option.arguments(
            "discipline", "DISCIPLINE", "two disciplines, like wet-braking and wear", true));
    options.addAll(Filter.OPTIONS);
    options.add(CompareOptions.VARIANCE);
    return options;
  }

  @Override
  public List<Column<TradeoffRow>> columns() {
    return NONE_TOLD;
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(RELATION, STEPS);
  }

  @Override
  public Answer<TradeoffRow> answer(QueryContext context, Choices choices) {
    List<String> given = choices.all("discipline");
    if (given.size() != 2 || given.get(0).equals(given.get(1))) {
      throw Choices.refusal("discipline", String.join(", ", given), "two disciplines");
    }
    for (String key : given) {
      CommonOptions.comparable("discipline", key, context.catalogue());
    }
    Evidence evidence = context.evidence();
    Filter filter = new Filter(choices, evidence);
    VarianceMethod method = CompareOptions.variance(choices);
    Inquiry inquiry =
        new Inquiry(
            kind(),
            "Is a gain in %s paid for in %s%s?"
                .formatted(given.get(0), given.get(1), filter.words()),
            choices.given());
    Optional<Network> x = context.networks().of(evidence, given.get(0), filter, method);
    Optional<Network> y = context.networks().of(evidence, given.get(1), filter, method);
    if (x.isEmpty() || y.isEmpty()) {
      return none(
          inquiry,
          "No test has two models with comparable values in "
              + given.get(x.isEmpty() ? 0 : 1)
              + ".",
          new Exclusions());
    }
    Exclusions excluded = new Exclusions();
    Stream.of(x.get(), y.get())
        .flatMap(network -> network.excluded().list().stream())
        .forEach(left -> excluded.add(left.reason(), left.count()));
    int[] models = CommonComponent.of(x.get(), y.get(), evidence.models().size(), excluded);
    if (models.length > MOST_MODELS) {
      throw new Refusal(
          "%d models are too many to set against each other; `--season`, `--segment` or `--from` leave fewer."
              .formatted(models.length));
    }
    if (models.length < 2) {
      return none(
          inquiry,
          "No two models are connected by tests in both %s and %s."
              .formatted(given.get(0), given.get(1)),
          excluded);
    }
    return told(inquiry, evidence, given, x.get(), y.get(), models, excluded);
  }

  private static Answer<TradeoffRow> none(Inquiry inquiry, String sentence, Exclusions excluded) {
    return Answer.to(inquiry)
        .summary(sentence)
        .columns(NONE_TOLD)
        .excluded(excluded.list())
        .build();
  }

  private static Answer<TradeoffRow> told(
      Inquiry inquiry,
      Evidence evidence,
      List<String> disciplines,
      Network x,
      Network y,
      int[] models,
      Exclusions excluded) {
    Axis onX = Axis.of(x, models);
    Axis onY = Axis.of(y, models);
    PairedArms pairs = new PairedArms(x.arms(), y.arms());
    List<ModelStep> steps =
        ModelStep.all(evidence.models()).stream()
            .filter(step -> holds(models, step.older()) && holds(models, step.newer()))
            .toList();
    StepAxis stepsX = StepAxis.of(x, steps);
    StepAxis stepsY = StepAxis.of(y, steps);
    Relation relation = Correlations.of(pairs, onX, onY, stepsX, stepsY);
    Map<Integer, TradeoffStep> toNewer = new HashMap<>();
    for (int i = 0; i < steps.size(); i++) {
      toNewer.put(
          steps.get(i).newer(),
          TradeoffStep.of(
              evidence,
              steps.get(i),
              x.measure(),
              stepsX.compared().get(i),
              y.measure(),
              stepsY.compared().get(i)));
    }
    boolean[] front = ParetoFront.of(onX.effect(), onY.effect(), Direction.HIGH, Direction.HIGH);
    double[] chance = FrontChance.of(onX, onY, SEED);
    Map<Integer, Integer> tests = pairs.tests();
    List<TradeoffRow> rows = new ArrayList<>();
    for (int i = 0; i < models.length; i++) {
      rows.add(
          TradeoffRow.of(
              evidence.models().get(models[i]).name(),
              x.measure(),
              onX,
              y.measure(),
              onY,
              i,
              front[i],
              chance == null ? null : (Double) chance[i],
              tests.getOrDefault(models[i], 0),
              toNewer.get(models[i])));
    }
    rows.sort(
        Comparator.comparing(TradeoffRow::front)
            .reversed()
            .thenComparing(row -> -row.x())
            .thenComparing(TradeoffRow::model));
    List<TradeoffStep> told = steps.stream().map(step -> toNewer.get(step.newer())).toList();
    Citations citations = new Citations(evidence);
    Stream.of(x, y)
        .flatMap(network -> network.entries().stream())
        .filter(entry -> holds(models, evidence.entries().model()[entry]))
        .sorted()
        .forEach(citations::citeEntry);
    return Answer.to(inquiry)
        .summary(
            TradeoffWords.summary(disciplines.get(0), disciplines.get(1), relation, rows, told))
        .columns(
            TradeoffColumns.of(
                evidence.catalogue().get(disciplines.get(0)).name(),
                x.measure().shownUnit(),
                evidence.catalogue().get(disciplines.get(1)).name(),
                y.measure().shownUnit()))
        .rows(rows)
        .excluded(excluded.list())
        .caveats(caveats(evidence, models, x, y, relation, citations))
        .sources(citations.list())
        .whole(RELATION, relation)
        .whole(STEPS, told)
        .build();
  }

  private static boolean holds(int[] models, int model) {
    return Arrays.binarySearch(models, model) >= 0;
  }

  private static List<String> caveats(
      Evidence evidence,
      int[] models,
      Network x,
      Network y,
      Relation relation,
      Citations citations) {
    List<String> caveats = new ArrayList<>();
    caveats.add(
        "Plus is better in both, against the mean of the models shown. The front is drawn from the"
            + " estimates; P(front) says how surely a model is on it, given their errors.");
    if (x.measure().isRatio() || y.measure().isRatio()) {
      caveats.add(CompareOptions.PER_CENT);
    }
    Set<Object> seasons = new HashSet<>();
    Arrays.stream(models).forEach(m -> seasons.add(evidence.models().get(m).season()));
    if (seasons.size() > 1) {
      caveats.add(
          "Models of several season classes are in: what sets the classes apart can hide or feign a"
              + " trade-off between models; `--season` keeps to one.");
    }
    if (relation.withinTests() != null) {
      caveats.add(
          "The scatter of runs draws the correlation inside tests towards zero; those between models"
              + " and steps are corrected for it.");
    }
    caveats.add("A correlation says what goes together, not what causes it.");
    CommonOptions.makerCaveat(citations).ifPresent(caveats::add);
    caveats.add(CommonOptions.RESULTS_HOLD);
    return caveats;
  }
}
