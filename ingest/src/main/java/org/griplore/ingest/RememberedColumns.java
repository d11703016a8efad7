package org.griplore.ingest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.griplore.ingest.forms.Receiver;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnMapReader;
import org.griplore.store.archive.ColumnMapRecord;
import org.griplore.store.archive.NameTaken;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.TestReport;

/** What was said of columns before, found again by the layout of a table. */
final class RememberedColumns {
  private final List<ColumnMapRecord> known;
  private final DisciplineCatalogue catalogue;

  RememberedColumns(List<ColumnMapRecord> known, DisciplineCatalogue catalogue) {
    this.known = known;
    this.catalogue = catalogue;
  }

  /** The layouts of a source's tables, without anything else it tells. */
  static final class Layouts implements Receiver {
    final Set<String> found = new LinkedHashSet<>();

    @Override
    public void layout(String layout) {
      found.add(layout);
    }

    @Override
    public void report(TestReport report) {}

    @Override
    public void lineage(LineageRow row, List<String> means) {}

    @Override
    public void name(String written, String model, NameTaken how) {}

    @Override
    public void finding(Finding finding) {}
  }

  /**
   * The options with what is remembered of such a source, where the user says nothing of columns.
   *
   * @param words every word that a cell of the source has: a layout whose headers have others is
   *     not looked for
   * @param reader reads the source by given options and tells a receiver
   */
  ReadOptions fill(
      ReadOptions options, Supplier<Set<String>> words, BiConsumer<ReadOptions, Receiver> reader) {
    if (known.isEmpty() || !options.map().isEmpty()) {
      return options;
    }
    Set<String> layouts = layouts(options, reader);
    Set<String> there = words.get();
    List<ReadOptions> tried = new ArrayList<>();
    for (ColumnMapRecord record : known) {
      Optional<ColumnMap> map = map(record);
      if (map.isPresent() && layouts.contains(record.layout())) {
        return options.with(map.get());
      }
      // a table of which nothing is recognised without the map is found with it only
      if (tried.isEmpty() && there.containsAll(headWords(record.layout()))) {
        map.map(options::with)
            .filter(with -> layouts(with, reader).contains(record.layout()))
            .ifPresent(tried::add);
      }
    }
    return tried.isEmpty() ? options : tried.get(0);
  }

  /** The words of a layout's headers; a publisher that stands before them is left out. */
  private static Set<String> headWords(String layout) {
    return words(layout.substring(layout.indexOf(": ") + 1));
  }

  /** The words of a text, folded as headers are. */
  static Set<String> words(String text) {
    return Arrays.stream(ColumnMap.plain(text).split("[\\s|]+"))
        .filter(word -> !word.isEmpty())
        .collect(Collectors.toSet());
  }

  private static Set<String> layouts(
      ReadOptions options, BiConsumer<ReadOptions, Receiver> reader) {
    Layouts layouts = new Layouts();
    try {
      reader.accept(options, layouts);
    } catch (Refusal refused) {
      return Set.of();
    }
    return layouts.found;
  }

  /** What is remembered; empty when it names a discipline that is not there any more. */
  private Optional<ColumnMap> map(ColumnMapRecord record) {
    try {
      return Optional.of(ColumnMapReader.read(record.map(), "remembered columns", catalogue));
    } catch (Refusal refused) {
      return Optional.empty();
    }
  }

  /** What is remembered of a layout, where it is the very map that was used. */
  Optional<ColumnMapRecord> same(String layout, ColumnMap used) {
    String text = ColumnMapReader.text(used);
    return known.stream()
        .filter(record -> record.layout().equals(layout) && record.map().equals(text))
        .findFirst();
  }

  static Finding finding(ColumnMapRecord record) {
    return new Finding(
        Finding.Kind.ASSUMED,
        null,
        record.layout(),
        "columns read as corrected on "
            + record.saidAt().toString().substring(0, 10)
            + " for "
            + record.file(),
        "`griplore columns --forget " + record.id() + "` forgets that");
  }
}
