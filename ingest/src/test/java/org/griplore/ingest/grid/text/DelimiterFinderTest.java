package org.griplore.ingest.grid.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Locale;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DelimiterFinderTest {
  private static final String[] WORDS = {
    "calm", "soft", "late", "honest", "in the wet", "quick to warm up", "a bit loud, though"
  };

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  /** Title, details, then a table; figures have a decimal comma wherever it can be told apart. */
  private static String table(Random random, char delimiter) {
    boolean commas = delimiter != ',';
    int figures = 1 + random.nextInt(8);
    int rows = 3 + random.nextInt(12);
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(4); i > 0; i--) {
      text.append("Size: 205/55 R16 91V\n");
    }
    if (random.nextBoolean()) {
      text.append('\n');
    }
    text.append("Model");
    for (int c = 0; c < figures; c++) {
      text.append(delimiter).append("Discipline ").append(c).append(commas ? ", m" : " (m)");
    }
    text.append(delimiter).append("Note\n");
    for (int r = 0; r < rows; r++) {
      text.append("Kelt ").append(r);
      for (int c = 0; c < figures; c++) {
        String figure = String.format(Locale.ROOT, "%.2f", 20 + 30 * random.nextDouble());
        text.append(delimiter).append(commas ? figure.replace('.', ',') : figure);
      }
      String note = WORDS[random.nextInt(WORDS.length)];
      text.append(delimiter).append(commas ? note : '"' + note + '"').append('\n');
    }
    return text.toString();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theDelimiterOfATableIsFound(long seed) throws IOException {
    Random random = new Random(seed);
    for (char delimiter : new char[] {',', ';', '\t', '|'}) {
      String text = table(random, delimiter);

      assertThat(DelimiterFinder.find(text, false))
          .as(text)
          .hasValueSatisfying(found -> assertThat(found.delimiter()).isEqualTo(delimiter));
    }
  }

  @Test
  void runningTextIsNoTable() throws IOException {
    String text =
        """
        Dry, warm day.
        The old set slid early, the new one did not, and both were easy to hold.
        On the wet circle, after ten laps, the new one faded a little.
        Nothing else to say.
        Quiet, too.
        """;

    assertThat(DelimiterFinder.find(text, false)).isEmpty();
  }

  @Test
  void aTableOfWordsIsATable() throws IOException {
    String text =
        """
        Model,Discipline,Note
        Kelt 2,wet-feel,"Slides early and lets you know long before it does, so no surprise here."
        Kelt 3,wet-feel,"Sharper on turn-in than the old one, but the rear follows without warning."
        """;

    assertThat(DelimiterFinder.find(text, false))
        .hasValueSatisfying(found -> assertThat(found.fields()).isEqualTo(3));
  }
}
