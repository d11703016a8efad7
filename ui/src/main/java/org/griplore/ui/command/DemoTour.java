package org.griplore.ui.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.griplore.query.Questions;
import org.griplore.query.answer.Answer;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.ui.render.OutputFormat;
import org.griplore.ui.render.TerminalTable;

/**
 * What a tester asks the night before a test, asked of the demo archive: how the old generation
 * ranked, what the step to its successor was, what gains were paid with, and the table to start
 * from.
 */
final class DemoTour {
  private static final List<Stop> STOPS =
      List.of(
          new Stop(
              "How did the old generation rank?",
              "placings",
              options("model", "Velmora Aurelis 4"),
              true),
          new Stop(
              "What did its successor gain in the wet, and is that more than usual?",
              "generations",
              options("line", "Velmora Aurelis 5", "discipline", "wet-braking"),
              true),
          new Stop(
              "Is grip on wet roads paid for with rolling resistance?",
              "tradeoff",
              options("discipline", "wet-braking", "discipline", "rolling-resistance"),
              false),
          new Stop(
              "A table for a new test: what was measured, what is expected?",
              "table",
              options(
                  "models", "Velmora Aurelis 5",
                  "models", "Drevanox Fervaro Sport Evo 2",
                  "models", "Kirazumi Hayari S-300",
                  "with", "predecessors",
                  "size", "205/55 R16",
                  "discipline", "wet-braking",
                  "discipline", "dry-braking",
                  "discipline", "straight-aquaplaning",
                  "discipline", "rolling-resistance"),
              true));

  /**
   * One question of the tour.
   *
   * @param whole whether the rows are shown, or the summary alone
   */
  private record Stop(
      String title, String kind, Map<String, List<String>> options, boolean whole) {}

  private DemoTour() {}

  private static Map<String, List<String>> options(String... pairs) {
    Map<String, List<String>> options = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      options.merge(
          pairs[i],
          List.of(pairs[i + 1]),
          (before, next) -> Stream.concat(before.stream(), next.stream()).toList());
    }
    return options;
  }

  /** Asks all of it, each answer under its command line. */
  static void show(QueryContext queryContext, Terminal terminal) {
    for (Stop stop : STOPS) {
      Question<?> question = Questions.of(stop.kind()).orElseThrow();
      Answer<?> answer = Questions.ask(question, queryContext, stop.options());
      terminal.out().println();
      terminal.out().println(stop.title());
      terminal.out().println("$ " + commandLine(question, stop));
      terminal.out().println();
      if (stop.whole()) {
        terminal.out().print(OutputFormat.TABLE.text(answer, terminal.style()));
      } else {
        new TerminalTable(terminal.style()).summary(answer, terminal.out());
      }
    }
    terminal.out().flush();
  }

  private static String commandLine(Question<?> question, Stop stop) {
    StringBuilder line = new StringBuilder("griplore ").append(stop.kind());
    question.options().stream()
        .filter(option -> stop.options().containsKey(option.name()))
        .forEach(
            option -> {
              for (String value : stop.options().get(option.name())) {
                line.append(option.isArgument() ? " " : " --" + option.name() + " ");
                line.append(value.contains(" ") ? '"' + value + '"' : value);
              }
            });
    return line.toString();
  }
}
