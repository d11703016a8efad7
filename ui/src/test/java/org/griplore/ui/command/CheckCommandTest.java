package org.griplore.ui.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.griplore.ui.DemoArchive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
  @TempDir Path folder;

  @Test
  void theDemoArchiveIsAsItsOriginalsSay() {
    String archive = DemoArchive.folder().toString();
    Run all = Run.of("check", "--all", "--archive", archive);
    assertThat(all.code()).isZero();
    assertThat(all.out()).containsPattern("Read anew: the originals of all \\d+ revisions; \\d{4}");

    Run sample = Run.of("check", "--sample", "3", "--seed", "5", "--archive", archive);
    assertThat(sample.out()).containsPattern("the originals of 3 of \\d+ revisions \\(seed 5\\)");
    assertThat(Run.of("check", "--sample", "3", "--seed", "5", "--archive", archive))
        .isEqualTo(sample);
    assertThat(Run.of("check", "--sample", "three", "--archive", archive).err())
        .contains("Option `sample` is \"three\"");
  }

  @Test
  void aChangedFigureIsFoundInTheReadingThatHoldsIt() throws IOException, SQLException {
    String archive = folder.resolve("archive").toString();
    Path table = folder.resolve("t.csv");
    for (String metres : new String[] {"31.2", "30.9"}) {
      Files.writeString(table, "Tyre,Wet braking (m)\nAlpha," + metres + "\nBeta,32.5\n");
      Run.of("add", table.toString(), "--test", "T1", "--archive", archive);
    }
    try (Connection connection =
            DriverManager.getConnection("jdbc:sqlite:" + archive + "/archive.db");
        Statement statement = connection.createStatement()) {
      statement.executeUpdate("UPDATE result SET value = 31.3 WHERE value = 31.2");
    }
    assertThat(Run.of("check", "--archive", archive).code()).isZero();
    assertThat(Run.of("sources", "--format", "csv", "--archive", archive).out())
        .contains("Changed: Alpha, wet-braking, test T1: 31.2 m became 30.9 m.");
    Run all = Run.of("check", "--all", "--archive", archive);
    assertThat(all.code()).isEqualTo(2);
    assertThat(all.out())
        .contains("4 figures, notes and runs compared, 1 revision with disagreements")
        .contains("t.csv, row 2, column 2 (Alpha, wet-braking, test T1): the archive has 31.3 m");
    assertThat(all.err()).contains("The archive has 1 problem.");
  }
}
