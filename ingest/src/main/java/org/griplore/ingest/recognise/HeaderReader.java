package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.store.vocabulary.Dimension;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.HeaderKey;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/** Says what a column holds by its header. */
public final class HeaderReader {
  private static final Pattern BRACKETS = Pattern.compile("[(\\[]([^)\\]]+)[)\\]]");

  private final DisciplineCatalogue catalogue;
  private final ColumnMap map;

  /** Knows these disciplines; what a map says counts first. */
  public HeaderReader(DisciplineCatalogue catalogue, ColumnMap map) {
    this.catalogue = catalogue;
    this.map = map;
  }

  /**
   * What a column holds.
   *
   * @param header its header text
   * @param unitText the text of a unit row below it; null where there is none
   */
  public ColumnRole role(String header, String unitText) {
    ColumnRole found = recognised(header, unitText);
    return map.of(header).map(rule -> rule.over(found)).orElse(found);
  }

  /**
   * What a column holds, or may hold by its number. A number alone names no column of tyres: it
   * would do so in every row.
   */
  ColumnRole role(int number, String header) {
    ColumnRole found = role(header, null);
    return map.of(number, new TableArea.Head(header, null, null))
        .filter(rule -> rule.header() != null || !namesTyres(rule))
        .map(rule -> rule.over(found))
        .orElse(found);
  }

  private static boolean namesTyres(ColumnMap.Rule rule) {
    return rule.role() instanceof ColumnRole.Tyre || rule.role() instanceof ColumnRole.Model;
  }

  private ColumnRole recognised(String header, String unitText) {
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
      return rating(bare);
    }
    Discipline discipline = match.get().discipline();
    Optional<ColumnRole> part = part(bare, unitText, discipline);
    if (part.isPresent()) {
      return part.get();
    }
    String rest = withoutWords(bare, match.get().words());
    return ColumnWords.topic(rest)
        .flatMap(word -> part(word, discipline))
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

  /** "Points" or "Mark" alone heads the overall result. */
  private ColumnRole rating(String header) {
    Optional<Unit> unit =
        header.length() < 3
            ? Optional.empty()
            : UnitWords.ofText(header).map(UnitWords.Recognised::unit);
    return unit.filter(u -> u.dimension() == Dimension.POINTS || u.dimension() == Dimension.MARK)
        .<ColumnRole>map(u -> new ColumnRole.Value(catalogue.get("overall"), u))
        .orElseGet(ColumnRole.Unknown::new);
  }

  /** A part that stands below the header, or in brackets behind it; "N" is newton, not a count. */
  private static Optional<ColumnRole> part(String header, String below, Discipline discipline) {
    Matcher brackets = BRACKETS.matcher(header);
    String text = below != null ? below : brackets.find() ? brackets.group(1) : "";
    return UnitWords.ofText(text).isPresent()
        ? Optional.empty()
        : ColumnWords.topic(text).flatMap(word -> part(word, discipline));
  }

  private static Optional<ColumnRole> part(String word, Discipline discipline) {
    return Optional.ofNullable(
        switch (word) {
          case "place" -> new ColumnRole.Place(discipline);
          case "spread" -> new ColumnRole.Spread(discipline);
          case "runs" -> new ColumnRole.Runs(discipline);
          default -> null;
        });
  }

  /** Whether a text says only which part of a discipline a column holds: a unit, the place ... */
  public boolean isPart(String text) {
    return UnitWords.ofText(text).isPresent()
        || UnitWords.inHeader(text).isPresent() && catalogue.byHeader(text).isEmpty()
        || ColumnWords.topic(text)
            .filter(
                word ->
                    word.equals("place")
                        || word.equals("spread")
                        || word.equals("runs")
                        || word.equals("value"))
            .isPresent();
  }

  /**
   * What each column of a table holds, as the map says or as recognised. A spread or a number of
   * runs belongs to the discipline before it, when it is the only one before it or stands right
   * behind it.
   */
  public List<ColumnRole> roles(TableArea area) {
    List<ColumnRole> roles = new ArrayList<>();
    Discipline before = null;
    int values = 0;
    boolean behind = false;
    for (TableArea.Head head : area.heads()) {
      ColumnRole role = recognised(head.text(), head.unitText());
      Optional<String> topic = ColumnWords.topic(stripMarks(head.text()));
      boolean part = role instanceof ColumnRole.Unknown && topic.isPresent();
      if (part && before != null && (behind || values == 1)) {
        role = part(topic.get(), before).orElse(role);
      }
      ColumnRole found = role;
      role = map.of(roles.size() + 1, head).map(rule -> rule.over(found)).orElse(role);
      behind = role instanceof ColumnRole.Value || behind && !(role instanceof ColumnRole.Unknown);
      if (role instanceof ColumnRole.Value value) {
        before = value.discipline();
        values++;
      }
      roles.add(role);
    }
    return roles;
  }

  /** The roles of columns, with what the map says of them over what was found. */
  public List<ColumnRole> mapped(List<TableArea.Head> heads, List<ColumnRole> found) {
    List<ColumnRole> roles = new ArrayList<>();
    for (int column = 0; column < found.size(); column++) {
      ColumnRole role = found.get(column);
      roles.add(map.of(column + 1, heads.get(column)).map(rule -> rule.over(role)).orElse(role));
    }
    return roles;
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
