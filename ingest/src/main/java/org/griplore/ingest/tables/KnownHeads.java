package org.griplore.ingest.tables;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.ingest.recognise.ColumnWords;
import org.griplore.ingest.recognise.HeaderReader;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.HeaderKey;
import org.griplore.store.vocabulary.HeaderParts;
import org.griplore.store.vocabulary.UnitWords;

/** What single texts would mean as headers; each text is looked at once. */
final class KnownHeads {
  private static final int LONGEST = 120;
  private static final int KEPT = 20_000;

  private final HeaderReader reader;
  private final DisciplineCatalogue catalogue;
  private final Map<String, ColumnRole> roles = new HashMap<>();
  private final Map<String, Boolean> parts = new HashMap<>();

  KnownHeads(DisciplineCatalogue catalogue, ColumnMap map) {
    this.reader = new HeaderReader(catalogue, map);
    this.catalogue = catalogue;
  }

  DisciplineCatalogue catalogue() {
    return catalogue;
  }

  HeaderReader reader() {
    return reader;
  }

  /** What a column with this header holds. */
  ColumnRole role(String header) {
    String text = header.length() > LONGEST ? unspaced(header) : header;
    if (text.isBlank() || text.length() > LONGEST) {
      return new ColumnRole.Unknown();
    }
    if (roles.size() > KEPT) {
      roles.clear();
    }
    return roles.computeIfAbsent(text, words -> reader.role(words, null));
  }

  /** A text with one blank in place of many. */
  static String unspaced(String text) {
    StringBuilder one = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      boolean blank = Character.isWhitespace(text.charAt(i));
      if (!blank || one.length() > 0 && one.charAt(one.length() - 1) != ' ') {
        one.append(blank ? ' ' : text.charAt(i));
      }
    }
    return one.toString();
  }

  /** Words that head tyres and figures, or at least two that head figures. */
  boolean isHeader(List<GridCell> row) {
    int names = 0;
    int figures = 0;
    for (GridCell cell : row) {
      names += isName(cell.text()) ? 1 : 0;
      figures += isFigure(cell.text()) ? 1 : 0;
    }
    return figures > 0 && names > 0 || figures > 1 && 2 * figures >= row.size();
  }

  /** Whether a cell is a plain word for tyres or makers. */
  boolean hasNameWord(List<GridCell> row) {
    return row.stream()
        .map(cell -> cell.text())
        .filter(text -> text.length() < 30)
        .flatMap(text -> ColumnWords.topic(text).stream())
        .anyMatch(topic -> topic.equals("tyre") || topic.equals("model") || topic.equals("maker"));
  }

  /** Whether a cell of a row heads tyres. */
  boolean hasName(CellBlock block, int row) {
    for (int c = 0; c < block.columns(); c++) {
      if (isName(block.text(row, c))) {
        return true;
      }
    }
    return false;
  }

  /** Whether it heads figures: a discipline, a place, or a surface with speeds. */
  boolean isFigure(String text) {
    ColumnRole role = role(text);
    return role instanceof ColumnRole.Value
        || role instanceof ColumnRole.Place
        || role instanceof ColumnRole.Unknown
            && text.length() <= LONGEST
            && (mayBeFigure(text) || SpeedWindow.in(text).isPresent());
  }

  private boolean mayBeFigure(String text) {
    return !text.isBlank() && !catalogue.candidates(text).isEmpty();
  }

  /** Whether it says a discipline or a place and nothing else, or names its unit. */
  boolean isMeasure(String text) {
    ColumnRole role = role(text);
    if (role instanceof ColumnRole.Place) {
      return true;
    }
    if (!(role instanceof ColumnRole.Value)) {
      return false;
    }
    if (UnitWords.inHeader(text).isPresent()) {
      return true;
    }
    List<String> words = new java.util.ArrayList<>(HeaderKey.words(text));
    catalogue.byHeader(text).ifPresent(match -> words.removeAll(List.of(match.words().split(" "))));
    words.removeIf(word -> word.length() < 3 || TableWords.FILLER.is(word));
    return words.isEmpty();
  }

  /** Whether it heads tyres, or a part of their names. */
  boolean isName(String text) {
    ColumnRole role = role(text);
    return role instanceof ColumnRole.Tyre
        || role instanceof ColumnRole.Model
        || role instanceof ColumnRole.Maker;
  }

  /** Whether it is a word that heads columns at all. */
  boolean isHead(String text) {
    return isFigure(text)
        || !(role(text) instanceof ColumnRole.Unknown)
        || ColumnWords.topic(text).isPresent()
        || isPart(text)
        || isSurface(text);
  }

  /** What a column holds, with the text of a unit row below its header. */
  ColumnRole role(String text, String unitText) {
    if (unitText == null) {
      return role(text);
    }
    if (text.length() > LONGEST || unitText.length() > LONGEST) {
      return new ColumnRole.Unknown();
    }
    return roles.computeIfAbsent(text + "\n" + unitText, words -> reader.role(text, unitText));
  }

  /** A unit, or a part of a discipline like the place. */
  boolean isPart(String text) {
    return parts.computeIfAbsent(
        text, words -> reader.isPart(words) && catalogue.candidates(words).isEmpty());
  }

  boolean isUnit(String text) {
    return text.length() < 30 && UnitWords.ofText(text).isPresent();
  }

  static boolean isSurface(String text) {
    return text.length() < 40
        && (HeaderParts.in(text, "wet")
            || HeaderParts.in(text, "dry")
            || HeaderParts.in(text, "snow")
            || HeaderParts.in(text, "ice"));
  }
}
