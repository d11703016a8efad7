package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("While two write at once")
class TwoWritersTest {
  private static final int FILES = 6;

  @Test
  @DisplayName(
      "pages are answered from one state or the next, the second is told to wait, and nothing is lost")
  void twoWriters(@TempDir Path folder) throws IOException {
    Path first = Files.writeString(folder.resolve("first.csv"), table("first"));
    try (Archive archive = DemoExplorer.archive(folder, first);
        QueryContext queryContext = new QueryContext(archive, DisciplineCatalogue.standard());
        Explorer explorer = new Explorer(queryContext)) {
      String at = "http://localhost:" + explorer.start(0);
      CompletableFuture<Void> one = writing(folder, "one");
      CompletableFuture<Void> other = writing(folder, "other");
      int seen = 1;
      while (!one.isDone() || !other.isDone()) {
        assertThat(Reader.get(at + "/tests").statusCode()).isEqualTo(200);
        int now = rows(Reader.get(at + "/tests.csv").body());
        assertThat(now).isGreaterThanOrEqualTo(seen);
        seen = now;
      }
      one.join();
      other.join();
      assertThat(rows(Reader.get(at + "/tests.csv").body())).isEqualTo(1 + 2 * FILES);
      assertThat(Reader.get(at + "/tests").body())
          .contains("one-%d".formatted(FILES - 1), "other-%d".formatted(FILES - 1));
    }
  }

  private static int rows(String csv) {
    return (int) csv.lines().count() - 1;
  }

  private static String table(String test) {
    return "test,date,model,discipline,value,unit\n%1$s,2020,Orlo Tar 1,wet-braking,30,m\n%1$s,2020,Orlo Tar 2,wet-braking,31,m\n"
        .formatted(test);
  }

  private static CompletableFuture<Void> writing(Path folder, String name) {
    return CompletableFuture.runAsync(
        () -> {
          try (Archive archive = Archive.open(folder.resolve("archive"))) {
            Intake intake = new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC());
            for (int i = 0; i < FILES; i++) {
              String test = name + "-" + i;
              Path file = Files.writeString(folder.resolve(test + ".csv"), table(test));
              Refusal refusal = add(intake, file);
              while (refusal != null) {
                // the one that comes second is told so, and tries again
                assertThat(refusal.sentence()).contains("try again when");
                refusal = add(intake, file);
              }
            }
          } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
          }
        });
  }

  private static Refusal add(Intake intake, Path file) {
    return intake.add(List.of(file), ReadOptions.NONE, (n, done, total) -> {}).get(0).refusal();
  }
}
