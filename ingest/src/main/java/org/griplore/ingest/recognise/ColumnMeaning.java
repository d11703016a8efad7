package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/** The words by which a user says what a column holds. */
public final class ColumnMeaning {
  private static final String NOT_TAKEN = "ignored";

  private ColumnMeaning() {}

  /** What a word means: {@code tyre}, {@code wet-braking}, {@code place wet-braking} ... */
  public static Optional<ColumnRole> of(String word, DisciplineCatalogue catalogue) {
    String plain = word.strip().toLowerCase(Locale.ROOT).replace(",", "").replaceAll("\\s+", " ");
    String[] parts = plain.split(" ", 2);
    Optional<Discipline> discipline =
        parts.length == 2 ? catalogue.find(parts[1]) : catalogue.find("overall");
    return switch (parts[0]) {
      case "tyre", "maker", "model", "size", "remark", NOT_TAKEN ->
          parts.length == 2 ? Optional.empty() : Optional.of(plainRole(plain));
      case "place" -> discipline.map(ColumnRole.Place::new);
      case "spread" -> parts.length < 2 ? Optional.empty() : discipline.map(ColumnRole.Spread::new);
      case "runs" -> parts.length < 2 ? Optional.empty() : discipline.map(ColumnRole.Runs::new);
      default -> catalogue.find(plain).map(found -> new ColumnRole.Value(found, null));
    };
  }

  private static ColumnRole plainRole(String word) {
    return switch (word) {
      case "tyre" -> new ColumnRole.Tyre();
      case "maker" -> new ColumnRole.Maker();
      case "model" -> new ColumnRole.Model();
      case "size" -> new ColumnRole.Size();
      case "remark" -> new ColumnRole.Remark();
      default -> new ColumnRole.Ignored("as was said");
    };
  }

  /** The word for what a column holds; what is not understood is not taken. */
  public static String word(ColumnRole role) {
    return role instanceof ColumnRole.Ignored || role instanceof ColumnRole.Unknown
        ? NOT_TAKEN
        : role.words().replace(",", "");
  }

  /** All words, those of columns beside the disciplines first. */
  public static List<String> words(DisciplineCatalogue catalogue) {
    List<String> words =
        new ArrayList<>(List.of("tyre", "maker", "model", "size", "remark", NOT_TAKEN));
    catalogue.all().forEach(discipline -> words.add(discipline.key()));
    for (String part : List.of("place", "spread", "runs")) {
      catalogue.all().forEach(discipline -> words.add(part + " " + discipline.key()));
    }
    return words;
  }

  static String expected(DisciplineCatalogue catalogue) {
    return "tyre, maker, model, size, remark, ignored, a discipline ("
        + String.join(", ", catalogue.all().stream().map(Discipline::key).toList())
        + "), or place, spread or runs and a discipline";
  }
}
