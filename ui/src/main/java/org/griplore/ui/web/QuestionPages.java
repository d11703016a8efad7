package org.griplore.ui.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.Questions;
import org.griplore.query.browse.CoverageQuestion;
import org.griplore.query.browse.FindingsQuestion;
import org.griplore.query.browse.HoldingsQuestion;
import org.griplore.query.browse.HoldingsQuestion.HoldingsRow;
import org.griplore.query.browse.LineageQuestion;
import org.griplore.query.browse.ModelsQuestion;
import org.griplore.query.browse.OriginQuestion;
import org.griplore.query.browse.SettleQuestion;
import org.griplore.query.browse.SourcesQuestion;
import org.griplore.query.browse.TestQuestion;
import org.griplore.query.compare.ContrastQuestion;
import org.griplore.query.compare.GenerationsQuestion;
import org.griplore.query.compare.StandingsQuestion;
import org.griplore.query.dependence.DependsQuestion;
import org.griplore.query.notes.FindQuestion;
import org.griplore.query.outlook.BacktestQuestion;
import org.griplore.query.outlook.OutlookQuestion;
import org.griplore.query.placings.PlacingsQuestion;
import org.griplore.query.plan.RunsQuestion;
import org.griplore.query.profile.LineQuestion;
import org.griplore.query.profile.ModelQuestion;
import org.griplore.query.question.Question;
import org.griplore.query.reweigh.ReweighQuestion;
import org.griplore.query.tradeoff.TradeoffQuestion;
import org.griplore.ui.web.chart.BacktestCharts;
import org.griplore.ui.web.chart.DependsCharts;
import org.griplore.ui.web.chart.EffectsCharts;
import org.griplore.ui.web.chart.HoldingsCharts;
import org.griplore.ui.web.chart.OutlookCharts;
import org.griplore.ui.web.chart.PlacingsCharts;
import org.griplore.ui.web.chart.ReweighCharts;
import org.griplore.ui.web.chart.RunsCharts;
import org.griplore.ui.web.chart.TradeoffCharts;
import org.griplore.ui.web.comparison.ComparisonPage;
import org.griplore.ui.web.intake.ColumnsPage;
import org.griplore.ui.web.notes.FindView;
import org.griplore.ui.web.page.AnswerPage;
import org.griplore.ui.web.page.QuestionPage;
import org.griplore.ui.web.record.CoverageView;
import org.griplore.ui.web.record.DescentView;
import org.griplore.ui.web.record.LineageView;
import org.griplore.ui.web.record.OriginView;
import org.griplore.ui.web.record.RecordView;
import org.griplore.ui.web.record.RunLogView;
import org.griplore.ui.web.record.TestView;
import org.griplore.ui.web.settle.SettleView;

/** The page of every question: its plots, and what it shows beside its table. */
public final class QuestionPages {
  /** What the archive holds; the start page shows it too. */
  static final AnswerPage<HoldingsRow> HOLDINGS =
      AnswerPage.of(new HoldingsQuestion()).drawing(HoldingsCharts::of);

  private static final List<QuestionPage> OWN =
      List.of(
          HOLDINGS,
          AnswerPage.of(new PlacingsQuestion()).drawing(PlacingsCharts::of),
          AnswerPage.of(new ModelQuestion())
              .drawing(EffectsCharts::ofModel)
              .laidOut(RecordView::pageOfModel),
          AnswerPage.of(new LineQuestion())
              .drawing(EffectsCharts::ofLine)
              .laidOut(RecordView::pageOfLine),
          AnswerPage.of(new StandingsQuestion()).drawing(EffectsCharts::ofStandings),
          AnswerPage.of(new ContrastQuestion()).drawing(EffectsCharts::ofContrast),
          AnswerPage.of(new GenerationsQuestion()).drawing(EffectsCharts::ofGenerations),
          AnswerPage.of(new RunsQuestion()).drawing(RunsCharts::of),
          new ComparisonPage(),
          AnswerPage.of(new TradeoffQuestion()).drawing(TradeoffCharts::of),
          AnswerPage.of(new OutlookQuestion()).drawing(OutlookCharts::of),
          AnswerPage.of(new BacktestQuestion()).drawing(BacktestCharts::of),
          AnswerPage.of(new ReweighQuestion()).drawing(ReweighCharts::of),
          AnswerPage.of(new DependsQuestion()).drawing(DependsCharts::of),
          AnswerPage.of(new FindQuestion()).laidOut(FindView::page),
          AnswerPage.of(new TestQuestion()).laidOut(TestView::page),
          RunLogView.RUNS,
          AnswerPage.of(new ModelsQuestion()).laidOut(LineageView::page),
          AnswerPage.of(new CoverageQuestion()).laidOut(CoverageView::page),
          AnswerPage.of(new OriginQuestion()).laidOut(OriginView::page),
          AnswerPage.of(new LineageQuestion()).laidOut(DescentView::page),
          AnswerPage.of(new SettleQuestion()).laidOut(SettleView::page),
          AnswerPage.of(new SourcesQuestion()).laidOut(ColumnsPage::besideSources),
          AnswerPage.of(new FindingsQuestion()).laidOut(ColumnsPage::besideSources));

  private QuestionPages() {}

  /** All pages; a question that is not named above has a table and no plot. */
  static List<QuestionPage> all() {
    Map<String, QuestionPage> own = new HashMap<>();
    OWN.forEach(page -> own.put(page.question().kind(), page));
    return Questions.all().stream()
        .map(question -> own.getOrDefault(question.kind(), plain(question)))
        .toList();
  }

  private static <R> QuestionPage plain(Question<R> question) {
    return AnswerPage.of(question);
  }
}
