package org.griplore.ui.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.ui.DemoArchive;
import org.griplore.ui.render.TerminalStyle;
import org.junit.jupiter.api.Test;

class DemoTourTest {
  @Test
  void goesFromThePastOfAGenerationToTheTableOfANewTest() {
    StringWriter out = new StringWriter();
    try (Archive archive = Archive.open(DemoArchive.folder());
        QueryContext queryContext = new QueryContext(archive, CommonWords.catalogue(archive))) {
      PrintWriter writer = new PrintWriter(out);
      DemoTour.show(
          queryContext,
          new Terminal(writer, writer, TerminalStyle.PLAIN, OutputStream.nullOutputStream()));
    }
    assertThat(out.toString())
        .containsSubsequence(
            "$ griplore placings \"Velmora Aurelis 4\"",
            "Velmora Aurelis 4 was among the first 3 in ",
            "$ griplore generations \"Velmora Aurelis 5\" --discipline wet-braking",
            "2 steps in wet-braking: 1 better",
            "$ griplore tradeoff wet-braking rolling-resistance",
            "Between 31 ",
            "a trade-off",
            "$ griplore table --models \"Velmora Aurelis 5\"",
            "6 tyres in 4 disciplines",
            "Kirazumi Hayari S-300");
    // each command line of the tour can be typed as it stands
    out.toString()
        .lines()
        .filter(line -> line.startsWith("$ griplore "))
        .map(line -> line.substring("$ griplore ".length()))
        .forEach(
            line -> {
              String[] words =
                  Pattern.compile("\"[^\"]*\"|\\S+")
                      .matcher(line)
                      .results()
                      .map(match -> match.group().replace("\"", ""))
                      .toArray(String[]::new);
              String[] whole = Arrays.copyOf(words, words.length + 2);
              whole[words.length] = "--archive";
              whole[words.length + 1] = DemoArchive.folder().toString();
              assertThat(Run.of(whole).code()).as(line).isZero();
            });
  }
}
