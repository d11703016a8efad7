package org.griplore.store.export;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.griplore.store.archive.views.ArchiveTable;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Scale;

/** The disciplines in use, as the catalogue describes them. */
final class DisciplineTable {
  static final ArchiveTable TABLE =
      new ArchiveTable(
          "disciplines",
          "Disciplines",
          "What is measured or rated in a test.",
          List.of(
              field("discipline", "The word for it in all other tables", true, List.of()),
              field("name", "The name a reader sees", false, List.of()),
              field("unit", "The unit in which results are kept", false, List.of()),
              field("better", "Which way is better in that unit", false, words(Direction.values())),
              field("scale", "How two results are compared", false, words(Scale.values())),
              field("describes", "How it is measured", false, List.of())),
          List.of("discipline"),
          List.of());

  private DisciplineTable() {}

  private static ArchiveTable.Field field(
      String name, String says, boolean required, List<String> words) {
    return new ArchiveTable.Field(name, ArchiveTable.Type.STRING, says, required, words);
  }

  private static List<String> words(Enum<?>[] values) {
    return Arrays.stream(values).map(DisciplineTable::word).toList();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  /** One that the catalogue does not know any more has only its key. */
  static Object[] row(String key, DisciplineCatalogue catalogue) {
    return catalogue
        .find(key)
        .map(DisciplineTable::row)
        .orElseGet(() -> new Object[] {key, null, null, null, null, null});
  }

  private static Object[] row(Discipline discipline) {
    return new Object[] {
      discipline.key(),
      discipline.name(),
      discipline.unit().symbol(),
      word(discipline.better()),
      word(discipline.scale()),
      discipline.describes()
    };
  }
}
