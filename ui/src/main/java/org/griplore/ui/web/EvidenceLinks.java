package org.griplore.ui.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.browse.CoverageQuestion.CoverageRow;
import org.griplore.query.browse.HoldingsQuestion.HoldingsRow;
import org.griplore.query.browse.ModelsQuestion.ModelRow;
import org.griplore.query.browse.SourcesQuestion.SourceRow;
import org.griplore.query.browse.TestsQuestion.TestRow;
import org.griplore.query.compare.ContrastQuestion.ContrastRow;
import org.griplore.query.compare.GenerationsQuestion.GenerationRow;
import org.griplore.query.compare.HeadToHead;
import org.griplore.query.compare.StandingRow;
import org.griplore.query.evidence.Filter;
import org.griplore.query.option.Option;
import org.griplore.query.outlook.BacktestQuestion.BacktestRow;
import org.griplore.query.outlook.OutlookRow;
import org.griplore.query.placings.Placing;
import org.griplore.query.placings.PlacingRow;
import org.griplore.query.profile.ProfileResult;
import org.griplore.query.profile.ProfileRow;
import org.griplore.query.reweigh.ReweighRow;
import org.griplore.query.seek.SeekQuestion.SeekRow;

/** The links of every answer: which results stand behind which figure, under the same filters. */
final class EvidenceLinks {
  private static final Set<String> SHARES =
      Set.of(
          "tests",
          "within",
          "share",
          "shareLow",
          "shareHigh",
          "expectedByChance",
          "chanceOfAtLeast",
          "bestPlace",
          "medianPlace");
  private static final Set<String> EFFECTS =
      Set.of("effect", "se", "low", "high", "score", "bestPlace", "medianPlace");
  private static final Set<String> DIFFERENCES =
      Set.of("difference", "step", "se", "low", "high", "direct", "indirect", "inconsistencyP");

  private final Inquiry inquiry;
  private final Map<String, List<String>> filters;

  private EvidenceLinks(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.filters = filters(inquiry);
  }

  static <R> EvidenceLink<R> of(Answer<R> answer) {
    EvidenceLinks links = new EvidenceLinks(answer.inquiry());
    return (column, row) -> links.address(column.key(), row);
  }

  /** The links of the tables inside rows: a figure leads to the cell it was read from. */
  static <R> EvidenceLink<R> inside() {
    return (column, row) -> cell(column.key(), row);
  }

  private static String cell(String key, Object row) {
    if (row instanceof ProfileResult result && (key.equals("value") || key.equals("place"))) {
      return Addresses.result(result.result());
    }
    if (row instanceof Placing placing && key.equals("place")) {
      return Addresses.result(placing.result());
    }
    if (row instanceof HeadToHead met && key.equals("first")) {
      return Addresses.result(met.firstResult());
    }
    return row instanceof HeadToHead met && key.equals("second")
        ? Addresses.result(met.secondResult())
        : null;
  }

  /** The filters of a question, as the next question takes them. */
  static Map<String, List<String>> filters(Inquiry inquiry) {
    Map<String, List<String>> filters = new LinkedHashMap<>();
    for (Option option : Filter.OPTIONS) {
      if (inquiry.options().containsKey(option.name())) {
        filters.put(option.name(), inquiry.options().get(option.name()));
      }
    }
    return filters;
  }

  private String address(String key, Object row) {
    if (row instanceof PlacingRow placing) {
      boolean alone = inquiry.options().getOrDefault("model", List.of()).size() == 1;
      return SHARES.contains(key) && !alone
          ? Addresses.with(inquiry, "model", placing.model())
          : null;
    }
    if (row instanceof StandingRow standing) {
      return standing(key, standing.model(), disciplineAsked("wet-braking"));
    }
    if (row instanceof ProfileRow profile) {
      return profile(key, profile);
    }
    if (row instanceof ContrastRow contrast) {
      return contrast(key, contrast);
    }
    if (row instanceof GenerationRow step) {
      return step(key, step);
    }
    return listed(key, row);
  }

  private String disciplineAsked(String fallback) {
    return inquiry.options().getOrDefault("discipline", List.of(fallback)).get(0);
  }

  private String standing(String key, String model, String discipline) {
    if (key.equals("tests")) {
      return ask("tests", "model", model, "discipline", discipline);
    }
    return EFFECTS.contains(key) ? ask("model", "model", model, "discipline", discipline) : null;
  }

  private String profile(String key, ProfileRow row) {
    boolean shown = inquiry.kind().equals("model") && inquiry.options().containsKey("discipline");
    if (key.equals("discipline")) {
      return Addresses.with(inquiry, "discipline", row.discipline());
    }
    return shown && !key.equals("tests") ? null : standing(key, row.model(), row.discipline());
  }

  private String contrast(String key, ContrastRow row) {
    List<String> models = inquiry.options().get("model");
    if (key.equals("directTests")) {
      return ask(
          "tests", "model", models.get(0), "model", models.get(1), "discipline", row.discipline());
    }
    boolean shown = inquiry.options().containsKey("discipline");
    return !shown && (DIFFERENCES.contains(key) || key.equals("discipline"))
        ? Addresses.with(inquiry, "discipline", row.discipline())
        : null;
  }

  private String step(String key, GenerationRow row) {
    return switch (key) {
      case "directTests" ->
          ask("tests", "model", row.newer(), "model", row.older(), "discipline", row.discipline());
      case "makerStep" ->
          Addresses.of(
              "contrast",
              options(
                  Map.of("source", List.of("maker")),
                  "model",
                  row.newer(),
                  "model",
                  row.older(),
                  "discipline",
                  row.discipline()));
      case "discipline" -> Addresses.with(inquiry, "discipline", row.discipline());
      default ->
          DIFFERENCES.contains(key)
              ? ask(
                  "contrast",
                  "model",
                  row.newer(),
                  "model",
                  row.older(),
                  "discipline",
                  row.discipline())
              : null;
    };
  }

  private String listed(String key, Object row) {
    if (row instanceof CoverageRow model) {
      return coverage(key, model);
    }
    if (row instanceof OutlookRow || row instanceof BacktestRow || row instanceof ReweighRow) {
      return prediction(key, row);
    }
    if (row instanceof HoldingsRow holding && holding.year() != null) {
      return key.equals("tests") || key.equals("results")
          ? Addresses.holding(holding.discipline(), holding.year())
          : null;
    }
    if (row instanceof ModelRow model && key.equals("tests") && model.tests() > 0) {
      return ask("tests", "model", model.model());
    }
    if (row instanceof SourceRow source) {
      return source(key, source);
    }
    if (row instanceof SeekRow found && key.equals("name")) {
      return found.option() == null
          ? Addresses.of(found.question(), Map.of())
          : Addresses.of(found.question(), Map.of(found.option(), List.of(found.value())));
    }
    if (row instanceof TestRow test && key.equals("entries")) {
      return Addresses.test(test.test());
    }
    return null;
  }

  private static String source(String key, SourceRow row) {
    return switch (key) {
      case "file", "number" -> Addresses.reading(row.revision());
      case "findings" ->
          row.current() && row.findings() > 0
              ? Addresses.of("findings", Map.of("file", List.of(row.file())))
              : null;
      default -> null;
    };
  }

  private String prediction(String key, Object row) {
    if (row instanceof OutlookRow outlook && outlook.tests() != null) {
      Map<String, List<String>> others = new LinkedHashMap<>(filters);
      others.remove("size"); // there it is the size of the new test, not a filter
      String kind = Map.of("tests", "tests", "expected", "model").get(key);
      return kind == null
          ? null
          : Addresses.of(
              kind, options(others, "model", outlook.model(), "discipline", outlook.discipline()));
    }
    if (row instanceof BacktestRow backtest) {
      return switch (key) {
        case "discipline" -> Addresses.with(inquiry, "discipline", backtest.discipline());
        case "tests" -> ask("tests", "discipline", backtest.discipline());
        default -> null;
      };
    }
    boolean alone = inquiry.options().getOrDefault("model", List.of()).size() == 1;
    return row instanceof ReweighRow reweigh
            && !alone
            && List.of("tests", "within", "share", "acceptable").contains(key)
        ? Addresses.with(inquiry, "model", reweigh.model())
        : null;
  }

  private String coverage(String key, CoverageRow row) {
    if (row.counts().containsKey(key)) {
      return ask("tests", "model", row.model(), "discipline", key);
    }
    return switch (key) {
      case "tests" -> row.tests() == 0 ? null : ask("tests", "model", row.model());
      case "lastYear" -> {
        Map<String, List<String>> year = new LinkedHashMap<>(filters);
        year.put("from", List.of(String.valueOf(row.lastYear())));
        year.put("to", List.of(String.valueOf(row.lastYear())));
        yield row.lastYear() == null
            ? null
            : Addresses.of("tests", options(year, "model", row.model()));
      }
      default -> null;
    };
  }

  private String ask(String kind, String... pairs) {
    return Addresses.of(kind, options(filters, pairs));
  }

  /** Names and values in turn, before the filters; a name given twice has two values. */
  private static Map<String, List<String>> options(
      Map<String, List<String>> filters, String... pairs) {
    Map<String, List<String>> options = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      options.merge(
          pairs[i],
          List.of(pairs[i + 1]),
          (some, more) -> java.util.stream.Stream.concat(some.stream(), more.stream()).toList());
    }
    filters.forEach(options::putIfAbsent);
    return options;
  }
}
