package org.griplore.query.directory;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.griplore.query.answer.Wording;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Names;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Discipline;

/**
 * What has a name in an archive: its models, lines, disciplines and tests, and the sizes, grounds,
 * vehicles and publications of the tests.
 */
public final class ArchiveEntries {
  private ArchiveEntries() {}

  /** The entries: models and tests that are in most reports, or newest, first. */
  public static List<DirectoryEntry> of(Evidence evidence) {
    List<DirectoryEntry> entries = new ArrayList<>();
    Map<String, Integer> lines = new LinkedHashMap<>();
    for (int model = 0; model < evidence.models().size(); model++) {
      ModelRecord record = evidence.models().get(model);
      if (!evidence.isTyre(model)) {
        continue;
      }
      entries.add(model(record, evidence.entriesOfModel().count(model)));
      if (record.line() != null) {
        lines.merge(Names.lineName(record), 1, Integer::sum);
      }
    }
    lines.forEach(
        (line, models) ->
            entries.add(
                new DirectoryEntry(
                    DirectoryEntry.Kind.LINE,
                    line,
                    List.of(),
                    Wording.counted(models, "model"),
                    "line",
                    "line",
                    line)));
    evidence.catalogue().all().stream().map(ArchiveEntries::discipline).forEach(entries::add);
    for (int test = evidence.tests().size() - 1; test >= 0; test--) {
      entries.add(test(evidence.tests().get(test)));
    }
    entries.addAll(shared(evidence, DirectoryEntry.Kind.SIZE, "size", ArchiveEntries::size));
    entries.addAll(shared(evidence, DirectoryEntry.Kind.VENUE, "venue", Details::venue));
    entries.addAll(shared(evidence, DirectoryEntry.Kind.VEHICLE, "vehicle", Details::vehicle));
    entries.addAll(
        shared(evidence, DirectoryEntry.Kind.PUBLICATION, "publication", Details::publication));
    return entries;
  }

  /** What several tests may have in common, those of most tests first. */
  private static List<DirectoryEntry> shared(
      Evidence evidence, DirectoryEntry.Kind kind, String option, Function<Details, String> part) {
    Map<String, Integer> tests = new LinkedHashMap<>();
    evidence.tests().stream()
        .map(test -> part.apply(test.details()))
        .filter(Objects::nonNull)
        .forEach(name -> tests.merge(name, 1, Integer::sum));
    return tests.entrySet().stream()
        .sorted(
            Map.Entry.<String, Integer>comparingByValue()
                .reversed()
                .thenComparing(Map.Entry.comparingByKey()))
        .map(
            one ->
                new DirectoryEntry(
                    kind,
                    one.getKey(),
                    List.of(),
                    Wording.counted(one.getValue(), "test"),
                    "tests",
                    option,
                    one.getKey()))
        .toList();
  }

  private static String size(Details details) {
    return details.size() == null
        ? null
        : TyreSize.find(details.size()).map(TyreSize::designation).orElse(null);
  }

  private static DirectoryEntry model(ModelRecord record, int entered) {
    String about =
        Stream.of(
                record.season() == null ? null : record.season().key(),
                record.launched() == null ? null : "from " + record.launched().text(),
                entered == 0 ? "not tested" : null)
            .filter(Objects::nonNull)
            .reduce((some, more) -> some + ", " + more)
            .orElse("");
    return new DirectoryEntry(
        DirectoryEntry.Kind.MODEL,
        record.name(),
        record.aliases(),
        about,
        "model",
        "model",
        record.name());
  }

  private static DirectoryEntry discipline(Discipline discipline) {
    List<String> names = new ArrayList<>(List.of(discipline.name()));
    discipline.headerWords().values().forEach(names::addAll);
    boolean total = discipline.key().equals("overall");
    return new DirectoryEntry(
        DirectoryEntry.Kind.DISCIPLINE,
        discipline.key(),
        names,
        discipline.name(),
        total ? "placings" : "standings",
        "discipline",
        discipline.key());
  }

  private static DirectoryEntry test(TestRecord record) {
    Details details = record.details();
    String title = details.title() == null ? record.key() : details.title();
    List<String> names =
        Stream.of(
                record.key(),
                details.publication(),
                details.vehicle(),
                details.size(),
                details.date() == null ? null : details.date().text())
            .filter(Objects::nonNull)
            .toList();
    String about =
        Stream.of(
                details.date() == null ? null : details.date().text(),
                title.equals(record.key()) ? null : record.key())
            .filter(Objects::nonNull)
            .reduce((some, more) -> some + ", " + more)
            .orElse("");
    return new DirectoryEntry(
        DirectoryEntry.Kind.TEST, title, names, about, "test", "test", record.key());
  }
}
