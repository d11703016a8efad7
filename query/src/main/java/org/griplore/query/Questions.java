package org.griplore.query;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.CoverageQuestion;
import org.griplore.query.browse.DecisionsQuestion;
import org.griplore.query.browse.DraftsQuestion;
import org.griplore.query.browse.FindingsQuestion;
import org.griplore.query.browse.HoldingsQuestion;
import org.griplore.query.browse.LineageQuestion;
import org.griplore.query.browse.ModelsQuestion;
import org.griplore.query.browse.NamesQuestion;
import org.griplore.query.browse.OriginQuestion;
import org.griplore.query.browse.RetoldQuestion;
import org.griplore.query.browse.RevisionQuestion;
import org.griplore.query.browse.SettleQuestion;
import org.griplore.query.browse.SourcesQuestion;
import org.griplore.query.browse.TestQuestion;
import org.griplore.query.browse.TestsQuestion;
import org.griplore.query.compare.ContrastQuestion;
import org.griplore.query.compare.GenerationsQuestion;
import org.griplore.query.compare.StandingsQuestion;
import org.griplore.query.dependence.DependsQuestion;
import org.griplore.query.log.LogQuestion;
import org.griplore.query.makers.MakersBeside;
import org.griplore.query.notes.FindQuestion;
import org.griplore.query.option.Choices;
import org.griplore.query.outlook.BacktestQuestion;
import org.griplore.query.outlook.OutlookQuestion;
import org.griplore.query.placings.PlacingsQuestion;
import org.griplore.query.plan.RunsQuestion;
import org.griplore.query.profile.LineQuestion;
import org.griplore.query.profile.ModelQuestion;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.query.reweigh.ReweighQuestion;
import org.griplore.query.search.SearchQuestion;
import org.griplore.query.table.TableQuestion;
import org.griplore.query.tradeoff.TradeoffQuestion;

/** Every question the archive answers, in the order of the help. */
public final class Questions {
  private static final List<Question<?>> TOLD =
      List.of(
          new PlacingsQuestion(),
          new ModelQuestion(),
          new LineQuestion(),
          new StandingsQuestion(),
          new ContrastQuestion(),
          new GenerationsQuestion(),
          new RunsQuestion(),
          new TableQuestion(),
          new TradeoffQuestion(),
          new OutlookQuestion(),
          new BacktestQuestion(),
          new ReweighQuestion(),
          new DependsQuestion(),
          new FindQuestion(),
          new TestsQuestion(),
          new TestQuestion(),
          new LogQuestion(),
          new ModelsQuestion(),
          new CoverageQuestion(),
          new HoldingsQuestion(),
          new OriginQuestion(),
          new SourcesQuestion(),
          new RevisionQuestion(),
          new FindingsQuestion(),
          new DraftsQuestion(),
          new SettleQuestion(),
          new RetoldQuestion(),
          new LineageQuestion(),
          new NamesQuestion(),
          new DecisionsQuestion());

  private static final List<Question<?>> ALL =
      Stream.concat(TOLD.stream(), Stream.<Question<?>>of(new SearchQuestion(TOLD))).toList();

  private Questions() {}

  /** All questions. */
  public static List<Question<?>> all() {
    return ALL;
  }

  /** The question with this word. */
  public static Optional<Question<?>> of(String kind) {
    return ALL.stream().filter(question -> question.kind().equals(kind)).findFirst();
  }

  /**
   * Answers a question with the options as given.
   *
   * @throws org.griplore.store.vocabulary.Refusal when an option cannot be understood
   */
  public static <R> Answer<R> ask(
      Question<R> question, QueryContext context, Map<String, List<String>> given) {
    Choices choices = Choices.of(question.kind(), question.example(), question.options(), given);
    return MakersBeside.told(question.answer(context, choices), context, choices);
  }
}
