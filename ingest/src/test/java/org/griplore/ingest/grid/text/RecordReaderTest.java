package org.griplore.ingest.grid.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordReaderTest {
  /** A record as {@code line:[fields]}. */
  private static List<String> records(String text, char delimiter) throws IOException {
    List<String> all = new ArrayList<>();
    try (RecordReader records = new RecordReader("a.csv", new StringReader(text), delimiter)) {
      while (records.next()) {
        List<String> fields = new ArrayList<>();
        for (int i = 0; i < records.count(); i++) {
          fields.add(records.field(i));
        }
        all.add(records.line() + ":" + fields);
      }
    }
    return all;
  }

  /** The forms that RFC 4180, section 2, describes. */
  @Test
  void quotesFollowRfc4180() throws IOException {
    assertThat(records("aaa,\"b CRLF\r\nbb\",ccc\r\nzzz,yyy,xxx", ','))
        .containsExactly("1:[aaa, b CRLF\r\nbb, ccc]", "3:[zzz, yyy, xxx]");
    assertThat(records("\"aaa\",\"b\"\"bb\",\"ccc\"\r\n", ','))
        .containsExactly("1:[aaa, b\"bb, ccc]");
    assertThat(records("a, b ,\n,\"\",", ',')).containsExactly("1:[a,  b , ]", "2:[, , ]");
  }

  @Test
  void aQuoteInsideAFieldIsText() throws IOException {
    assertThat(records("rim 16\",x\n17\" wheel,y\n", ','))
        .containsExactly("1:[rim 16\", x]", "2:[17\" wheel, y]");
  }

  @Test
  void lineEndsOfAllSystemsCountOnce() throws IOException {
    assertThat(records("a\rb\r\nc\n\nd", ','))
        .containsExactly("1:[a]", "2:[b]", "3:[c]", "4:[]", "5:[d]");
  }

  @Test
  void aQuoteThatIsNeverClosedIsRefusedAtItsLine() {
    assertThatThrownBy(() -> records("a,b\nc,\"d\ne,f\n", ','))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> {
              assertThat(refusal.sentence())
                  .isEqualTo("a.csv, line 2, column 2: the quote opened here is never closed.");
              assertThat(refusal.problems())
                  .extracting(Problem::where)
                  .containsExactly("a.csv, line 2, column 2");
            });
  }

  @Test
  void aZeroByteIsRefusedAtItsPlace() {
    assertThatThrownBy(() -> records("a,b\nc,\u0000\n", ','))
        .isInstanceOf(Refusal.class)
        .hasMessage("a.csv, line 2, column 2: there is a zero byte; expected text.");
  }

  /** Whatever fields are written by RFC 4180 are read back, on the lines they stand on. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void writtenFieldsAreReadBack(long seed) throws IOException {
    Random random = new Random(seed);
    String alphabet = "ab1,;\t|\" \n\u00e9\u2013";
    char delimiter = ",;\t|".charAt(random.nextInt(4));
    StringBuilder text = new StringBuilder();
    List<String> expected = new ArrayList<>();
    int line = 1;
    for (int r = 0; r < 3000; r++) {
      List<String> fields = new ArrayList<>();
      for (int c = 0; c < 1 + random.nextInt(6); c++) {
        StringBuilder field = new StringBuilder();
        for (int i = random.nextInt(12); i > 0; i--) {
          field.append(alphabet.charAt(random.nextInt(alphabet.length())));
        }
        fields.add(field.toString());
      }
      expected.add(line + ":" + fields);
      for (int c = 0; c < fields.size(); c++) {
        text.append(c > 0 ? String.valueOf(delimiter) : "");
        text.append('"').append(fields.get(c).replace("\"", "\"\"")).append('"');
      }
      text.append('\n');
      line += 1 + (int) String.join("", fields).chars().filter(c -> c == '\n').count();
    }

    assertThat(records(text.toString(), delimiter)).isEqualTo(expected);
  }
}
