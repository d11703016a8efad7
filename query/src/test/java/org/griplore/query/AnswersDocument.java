package org.griplore.query;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Sense;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.option.Option;
import org.griplore.query.question.Question;

/** Writes ANSWERS.md from the questions: options, row keys, units and meaning. */
final class AnswersDocument {
  private static final String HEAD =
      """
      # What can be asked, and what each answer tells

      Made from the questions themselves; do not edit. `AnswersDocumentTest` says when it is stale and how to renew it.

      `griplore QUESTION --option value` is `/QUESTION?option=value` and `/QUESTION.json?option=value`. JSON has `question`, `answer`, `columns`
      (what the tables below say of each key), `rows`, `excluded`, `caveats`, `sources` and, where figures refer to them, `footnotes`; figures about
      the rows as a whole stand beside these. Missing is `null` in JSON and empty in CSV. A share or a chance is a number from 0 to 1. A unit in
      brackets names the key that tells each row's own unit. *Better* says which way is better; a difference is turned so that plus is better.

      CSV has a line for each row. A list of texts or numbers is one cell, its items joined by `|` (a `|` or a `\\` inside an item stands behind a
      `\\`). A figure of a comparison table takes a column for each of its parts: the value under the discipline's key, the others behind it and a
      point (`wet-braking.place`). Rows inside rows (`places[]`) are left to JSON and to the sheets of a workbook. A text that a spreadsheet would
      run as a formula stands behind an apostrophe. `DISCIPLINE` stands for a discipline's key.
      """;

  private final StringBuilder text = new StringBuilder();

  private AnswersDocument() {}

  static String text() {
    AnswersDocument document = new AnswersDocument();
    document.text.append(HEAD);
    Questions.all().forEach(document::add);
    return document.text.toString();
  }

  private void add(Question<?> question) {
    line("");
    line("## `" + question.kind() + "`");
    line(question.purpose() + ": `griplore " + question.example() + "`");
    if (!question.options().isEmpty()) {
      line("");
      line("| option | value | what it does |");
      line("| --- | --- | --- |");
      question.options().forEach(this::add);
    }
    line("");
    line("| row key | unit | better | meaning |");
    line("| --- | --- | --- | --- |");
    add("", question.columns());
    for (WholeFigure<?> whole : question.wholes()) {
      line("");
      line("`" + whole.key() + "`, of the rows as a whole: " + whole.meaning());
    }
  }

  private void add(Option option) {
    String value =
        option.words().isEmpty()
            ? "`" + option.value() + "`"
            : String.join(", ", option.words().stream().map(word -> "`" + word + "`").toList());
    List<String> more = new ArrayList<>();
    if (option.isNeeded()) {
      more.add("needed");
    }
    if (option.isMany()) {
      more.add("may be repeated");
    }
    if (option.fallback() != null) {
      more.add("`" + option.fallback() + "` when not given");
    }
    String name = option.isArgument() ? option.name() : "--" + option.name();
    row(
        "`" + name + "`",
        value,
        option.meaning() + (more.isEmpty() ? "" : "; ") + String.join("; ", more));
  }

  private void add(String before, List<? extends Column<?>> columns) {
    for (Column<?> column : columns) {
      Sense sense = column.sense();
      String unit = sense.unitKey() == null ? sense.unit() : "(`" + sense.unitKey() + "`)";
      row(
          "`" + before + column.key() + "`",
          unit == null ? "" : unit,
          sense.better() == null ? "" : sense.betterWord(),
          sense.meaning());
      switch (column.format()) {
        case ROWS -> add(before + column.key() + "[].", column.inner());
        case FIGURE -> add(before + column.key() + ".", column.inner());
        default -> {}
      }
    }
  }

  private void row(String... cells) {
    for (String cell : cells) {
      text.append("| ").append(cell.replace("|", "\\|")).append(cell.isEmpty() ? "" : " ");
    }
    line("|");
  }

  private void line(String line) {
    text.append(line).append('\n');
  }
}
