package org.griplore.query;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** ANSWERS.md says what the questions say. */
class AnswersDocumentTest {
  private static final Path DOCUMENT = Path.of("ANSWERS.md");
  private static final String RENEW =
      "query/ANSWERS.md is stale; renew it with: mvn -q -pl query -am test -Dtest=AnswersDocumentTest"
          + " -Danswers.renew=true -Dsurefire.failIfNoSpecifiedTests=false";

  @Test
  void isNotStale() throws IOException {
    String told = AnswersDocument.text();
    if (Boolean.getBoolean("answers.renew")) {
      Files.writeString(DOCUMENT, told);
    }
    assertThat(Files.exists(DOCUMENT) ? Files.readString(DOCUMENT) : "").as(RENEW).isEqualTo(told);
  }
}
