package org.griplore.ui.web.notes;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.griplore.ingest.AddedSource;
import org.griplore.ingest.Intake;
import org.griplore.ingest.Preview;
import org.griplore.ingest.ReadOptions;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.ui.web.gate.WriteGate;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.page.Pages;

/**
 * A note written in the page: it is kept as a source of its own, in the form of a file of notes.
 */
public final class NotePages {
  /** No meaning: a long paragraph; more is a file of notes. */
  private static final int LONGEST = 4000;

  private final QueryContext queryContext;
  private final Pages pages;
  private final WriteGate writing;
  private final Clock clock;
  private final Intake intake;

  public NotePages(QueryContext queryContext, Pages pages, WriteGate writing, Clock clock) {
    this.queryContext = queryContext;
    this.pages = pages;
    this.writing = writing;
    this.clock = clock;
    this.intake = new Intake(queryContext.archive(), queryContext.catalogue(), clock);
  }

  /** The empty form, for a test or for a model in one of its tests. */
  public String empty(Context context) {
    Map<String, String> typed = new HashMap<>();
    for (String name : List.of("test", "model")) {
      if (context.queryParam(name) != null) {
        typed.put(name, context.queryParam(name));
      }
    }
    return page(typed, null);
  }

  private String page(Map<String, String> typed, String problem) {
    Evidence evidence = queryContext.evidence();
    List<String> tests = new ArrayList<>();
    TreeSet<String> models = new TreeSet<>();
    for (int entry = 0; entry < evidence.entries().count(); entry++) {
      String test = evidence.tests().get(evidence.entries().test()[entry]).key();
      String model = evidence.models().get(evidence.entries().model()[entry]).name();
      boolean fits =
          typed.containsKey("test")
              ? test.equals(typed.get("test"))
              : model.equals(typed.get("model"));
      if (fits) {
        models.add(model);
        if (!tests.contains(test)) {
          tests.add(test);
        }
      }
    }
    if (typed.containsKey("test") && tests.isEmpty() && isTest(typed.get("test"))) {
      tests.add(typed.get("test"));
    }
    if (tests.isEmpty()) {
      String found = typed.getOrDefault("test", typed.getOrDefault("model", ""));
      if (found.isBlank()) {
        throw new Refusal(
            "A note is on a test or a model: open its page and take the link \"Add a note\" there.",
            new Problem("test", "", "a test's key, as at /tests"));
      }
      throw new Refusal(
          "\"" + found + "\" is no test, and no model of a test, in the archive.",
          new Problem("test", found, "a test's key, as at /tests"));
    }
    java.util.Collections.reverse(tests);
    return pages.render(
        "note.jte",
        new NoteView(
            writing.token(),
            writing.whyClosed(),
            tests,
            List.copyOf(models),
            pages.offers().disciplines(),
            typed,
            problem));
  }

  private boolean isTest(String key) {
    return queryContext.evidence().tests().stream().anyMatch(test -> test.key().equals(key));
  }

  /**
   * Adds a note.
   *
   * @return the page again, with what is wrong; null when the browser was led on
   */
  public String add(Context context) {
    Map<String, String> typed = new HashMap<>();
    context.formParamMap().forEach((name, values) -> typed.put(name, values.get(0)));
    String text = typed.getOrDefault("text", "").replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
    if (text.isEmpty() || text.length() > LONGEST) {
      return page(
          typed,
          text.isEmpty()
              ? "The note is empty: write what was noticed."
              : "The note has %d letters; at most %d are taken here."
                  .formatted(text.length(), LONGEST));
    }
    String test = typed.getOrDefault("test", "");
    if (!isTest(test)) {
      throw new Refusal(
          "\"" + test + "\" is no test in the archive.",
          new Problem("test", test, "a test's key, as at /tests"));
    }
    Original source = source(test, typed.getOrDefault("model", ""), typed, text);
    if (!isRead(source, text)) {
      return page(typed, "This text cannot be told from a table: put it into words.");
    }
    AddedSource added = intake.add(source, ReadOptions.NONE);
    if (added.refusal() != null) {
      throw added.refusal();
    }
    WriteGate.lead(context, Addresses.of("test", Map.of("test", List.of(test))));
    return null;
  }

  private Original source(String test, String model, Map<String, String> typed, String text) {
    Optional<Discipline> discipline =
        queryContext.catalogue().find(typed.getOrDefault("discipline", ""));
    String heading =
        queryContext.evidence().models().stream().anyMatch(m -> m.name().equals(model))
            ? model
            : "General";
    String content =
        "Test: %s\n\n## %s\n\n- %s%s\n"
            .formatted(test, heading, discipline.map(d -> d.name() + ": ").orElse(""), text);
    byte[] bytes = content.getBytes(StandardCharsets.UTF_8);
    String hash = Original.of("note", bytes).sha256();
    return Original.of("note-" + LocalDate.now(clock) + "-" + hash.substring(0, 8) + ".md", bytes);
  }

  /** Whether the file of notes would be read as what was written. */
  private boolean isRead(Original source, String text) {
    try {
      Preview preview = intake.preview(source, ReadOptions.NONE);
      List<Note> notes = preview.reports().stream().flatMap(r -> r.notes().stream()).toList();
      return notes.size() == 1 && notes.get(0).text().endsWith(text);
    } catch (Refusal refused) {
      return false;
    }
  }
}
