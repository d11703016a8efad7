package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.HeaderKey;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/** Says what a column holds by its header. */
public final class HeaderReader {
  private final DisciplineCatalogue catalogue;

  /** Knows these disciplines. */
  public HeaderReader(DisciplineCatalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * What a column holds.
   *
   * @param header its header text
   * @param unitText the text of a unit row below it; null where there is none
   */
  public ColumnRole role(String header, String unitText) {
    String bare = stripMarks(header);
    Optional<String> topic = ColumnWords.topic(bare);
    if (topic.isPresent()) {
      ColumnRole known = byTopic(topic.get());
      if (known != null) {
        return known;
      }
    }
    Optional<DisciplineCatalogue.Match> match = catalogue.byHeader(bare);
    if (match.isEmpty()) {
      return new ColumnRole.Unknown();
    }
    Discipline discipline = match.get().discipline();
    String rest = withoutWords(bare, match.get().words());
    return ColumnWords.topic(rest)
        .map(
            word ->
                switch (word) {
                  case "place" -> (ColumnRole) new ColumnRole.Place(discipline);
                  case "spread" -> new ColumnRole.Spread(discipline);
                  case "runs" -> new ColumnRole.Runs(discipline);
                  default -> value(discipline, bare, unitText);
                })
        .orElseGet(() -> value(discipline, bare, unitText));
  }

  /** What a header says beside the words that name the discipline. */
  private static String withoutWords(String header, String words) {
    List<String> rest = new ArrayList<>(HeaderKey.words(header));
    for (String word : words.split(" ")) {
      rest.remove(word);
    }
    return String.join(" ", rest);
  }

  private ColumnRole value(Discipline discipline, String header, String unitText) {
    return new ColumnRole.Value(discipline, unit(header, unitText));
  }

  private static Unit unit(String header, String unitText) {
    if (unitText != null) {
      Optional<UnitWords.Recognised> below =
          UnitWords.ofText(unitText).or(() -> UnitWords.inHeader(unitText));
      if (below.isPresent()) {
        return below.get().unit();
      }
    }
    return UnitWords.inHeader(header).map(UnitWords.Recognised::unit).orElse(null);
  }

  private ColumnRole byTopic(String topic) {
    return switch (topic) {
      case "tyre" -> new ColumnRole.Tyre();
      case "maker" -> new ColumnRole.Maker();
      case "model" -> new ColumnRole.Model();
      case "size" -> new ColumnRole.Size();
      case "place" -> new ColumnRole.Place(catalogue.get("overall"));
      case "mark" -> new ColumnRole.Value(catalogue.get("overall"), Unit.SCHOOL_MARK);
      case "remark" -> new ColumnRole.Remark();
      case "number" -> new ColumnRole.Ignored("a running number");
      case "season" -> new ColumnRole.Ignored("the season stands with the model");
      case "load_speed" ->
          new ColumnRole.Ignored("load index and speed symbol stand with the size");
      default -> null;
    };
  }

  /** Footnote marks at a header's end say nothing of the column. */
  private static String stripMarks(String header) {
    return header.replaceAll("\\s*(\\[\\d{1,2}\\]|[*\u2020\u2021\u00b9\u00b3]+)\\s*$", "").strip();
  }
}
