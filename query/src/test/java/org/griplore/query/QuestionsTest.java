package org.griplore.query;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.question.Question;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every question promises of its answers before it is asked. */
class QuestionsTest {
  static Stream<Question<?>> questions() {
    return Questions.all().stream();
  }

  @ParameterizedTest
  @MethodSource("questions")
  void everyColumnSaysWhatItMeans(Question<?> question) {
    assertThat(question.columns()).isNotEmpty();
    check(question.kind(), question.columns());
    for (WholeFigure<?> whole : question.wholes()) {
      assertThat(whole.meaning()).as(question.kind() + " " + whole.key()).endsWith(".");
    }
  }

  private static void check(String where, List<? extends Column<?>> columns) {
    List<String> keys = columns.stream().<String>map(Column::key).toList();
    assertThat(keys).as(where).doesNotHaveDuplicates();
    for (Column<?> column : columns) {
      String at = where + " " + column.key();
      assertThat(column.sense().meaning()).as(at).endsWith(".").matches("(?s)\\S.*\\S");
      assertThat(column.title()).as(at + ": the unit is told apart").doesNotContain(", %", ", m");
      if (column.sense().unitKey() != null) {
        assertThat(keys).as(at).contains(column.sense().unitKey());
        assertThat(column.sense().unit()).as(at).isNull();
      }
      if (column.format() == Format.ROWS || column.format() == Format.FIGURE) {
        assertThat(column.inner()).as(at).isNotEmpty();
      }
      check(at, column.inner());
    }
  }
}
