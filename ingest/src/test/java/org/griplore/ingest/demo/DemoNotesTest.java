package org.griplore.ingest.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.griplore.store.scenario.SimulatedReport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The hand-written notes belong to tests and tyres of the archive, and are many and varied. */
class DemoNotesTest {
  private static final Path FOLDER = Path.of("..", "demo-archive", "notes");
  private static final Pattern DETAIL = Pattern.compile("(Test|Date|Datum): (.+)");
  private static final Pattern PREFIX = Pattern.compile("([\\p{L} -]{4,25}): .*");

  /** A notes file: its lines and the report it belongs to. */
  private record NotesFile(String name, List<String> lines, SimulatedReport report) {
    List<String> notes() {
      return lines.stream().filter(l -> l.startsWith("- ")).map(l -> l.substring(2)).toList();
    }
  }

  private static DemoArchive archive;
  private static final List<NotesFile> FILES = new ArrayList<>();

  @BeforeAll
  static void read() throws IOException {
    archive = DemoArchive.rendered();
    try (Stream<Path> paths = Files.list(FOLDER)) {
      for (Path path : paths.sorted().toList()) {
        FILES.add(file(path));
      }
    }
  }

  private static NotesFile file(Path path) throws IOException {
    List<String> lines = Files.readAllLines(path);
    Map<String, String> details = new HashMap<>();
    for (String line : lines) {
      Matcher detail = DETAIL.matcher(line);
      if (detail.matches()) {
        details.putIfAbsent(detail.group(1), detail.group(2));
      }
    }
    String title = lines.get(0).substring(2);
    SimulatedReport report =
        archive.reports().values().stream()
            .filter(r -> r.title().equals(title))
            .filter(r -> !details.containsKey("Test") || details.get("Test").equals(r.key()))
            .filter(r -> dates(r).contains(details.getOrDefault("Date", details.get("Datum"))))
            .findFirst()
            .orElseThrow(() -> new AssertionError(path + " belongs to no report: " + details));
    return new NotesFile(path.getFileName().toString(), lines, report);
  }

  private static Set<String> dates(SimulatedReport r) {
    Set<String> forms =
        Arrays.stream(Lingo.values())
            .map(l -> l.date(r.date().firstDay()))
            .collect(Collectors.toSet());
    forms.add(
        r.date()
                .firstDay()
                .getMonth()
                .getDisplayName(java.time.format.TextStyle.FULL, Locale.ENGLISH)
            + " "
            + r.date().year());
    return forms;
  }

  @Test
  void sectionsAreTyresOfTheTest() {
    for (NotesFile file : FILES) {
      Set<String> field =
          file.report().entries().stream()
              .map(e -> e.model().fullName())
              .collect(Collectors.toSet());
      field.addAll(Set.of("General", "Test"));
      List<String> headings =
          file.lines().stream().filter(l -> l.startsWith("## ")).map(l -> l.substring(3)).toList();
      assertThat(field).as(file.name()).containsAll(headings);
    }
  }

  @Test
  void disciplinePrefixesNameDisciplinesOfTheTest() {
    Map<String, String> words = new LinkedHashMap<>();
    for (String key : archive.report("own-2018-2").disciplines()) {
      learn(words, key);
    }
    archive.reports().values().forEach(r -> r.disciplines().forEach(key -> learn(words, key)));
    int prefixed = 0;
    for (NotesFile file : FILES) {
      for (String note : file.notes()) {
        Matcher prefix = PREFIX.matcher(note);
        if (prefix.matches() && words.containsKey(prefix.group(1).toLowerCase(Locale.ROOT))) {
          assertThat(file.report().disciplines())
              .as(file.name() + ": " + note)
              .contains(words.get(prefix.group(1).toLowerCase(Locale.ROOT)));
          prefixed++;
        }
      }
    }
    assertThat(prefixed).isGreaterThan(150);
  }

  private static void learn(Map<String, String> words, String key) {
    for (Lingo lingo : Lingo.values()) {
      words.put(HeaderWords.of(key, lingo, 0).toLowerCase(Locale.ROOT), key);
      words.put(HeaderWords.of(key, lingo, 1).toLowerCase(Locale.ROOT), key);
    }
  }

  @Test
  void remarksBelongToEntries() {
    for (String key : archive.remarks().keys()) {
      String[] parts = key.split("\\|");
      assertThat(archive.report(parts[0]).entries().stream().map(e -> e.model().fullName()))
          .contains(parts[1]);
    }
  }

  @Test
  void notesAreManyVariedAndNoTwoAlike() {
    List<String> all = new ArrayList<>();
    FILES.forEach(file -> all.addAll(file.notes()));
    assertThat(all.size()).isGreaterThanOrEqualTo(300);
    assertThat(all.size() + archive.remarks().count()).isGreaterThanOrEqualTo(350);
    double words = all.stream().mapToInt(n -> n.split("\\s+").length).average().orElseThrow();
    assertThat(words).isBetween(20.0, 45.0);
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertThat(likeness(all.get(i), all.get(j)))
            .as(all.get(i) + " / " + all.get(j))
            .isLessThan(0.5);
      }
    }
  }

  /** Share of common words among all words of both (Jaccard). */
  private static double likeness(String a, String b) {
    Set<String> x = words(a);
    Set<String> y = words(b);
    long common = x.stream().filter(y::contains).count();
    return common / (double) (x.size() + y.size() - common);
  }

  private static Set<String> words(String note) {
    return Arrays.stream(note.toLowerCase(Locale.ROOT).split("[^\\p{L}\\d]+"))
        .filter(w -> w.length() > 3)
        .collect(Collectors.toSet());
  }
}
