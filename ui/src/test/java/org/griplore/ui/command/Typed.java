package org.griplore.ui.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** A command line as it stands in help and documents. */
public final class Typed {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|\\S+");

  private Typed() {}

  /** What a question typed so answers from an archive, in a format; it must not be refused. */
  public static String on(Path archive, String line, String format) {
    List<String> words = words(line);
    words.addAll(List.of("--archive", archive.toString(), "--format", format));
    Run run = Run.of(words.toArray(String[]::new));
    assertThat(run.err()).as(line).isEmpty();
    assertThat(run.code()).as(line).isLessThan(2);
    return run.out();
  }

  static List<String> words(String line) {
    List<String> words = new ArrayList<>();
    WORD.matcher(line)
        .results()
        .forEach(word -> words.add(word.group(1) == null ? word.group() : word.group(1)));
    return words;
  }
}
