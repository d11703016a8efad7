package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.HeaderKey;
import org.griplore.store.vocabulary.HeaderParts;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/**
 * What the title, the sheet's name and the lines around a table say of all its columns.
 *
 * @param discipline the one discipline that they name; null when they name none or several
 * @param surface {@code wet}, {@code dry}, {@code snow} or {@code ice}; null when none or several
 *     are named
 * @param unit a unit; null when none is named
 * @param window the speeds; null when none are named
 * @param better 1, -1 or 0, as in {@link HeadText}
 * @param base what the figures are told from
 */
record TitleWords(
    Discipline discipline,
    String surface,
    Unit unit,
    SpeedWindow window,
    int better,
    HeadText.Base base) {
  private static final List<String> SURFACES = List.of("wet", "dry", "snow", "ice");
  private static final int LONGEST = 160;

  /** Reads the lines, the nearest first. */
  static TitleWords of(List<String> lines, DisciplineCatalogue catalogue) {
    Discipline discipline = null;
    String surface = null;
    Unit unit = null;
    SpeedWindow window = null;
    int better = 0;
    HeadText.Base base = HeadText.Base.NONE;
    for (String line : lines) {
      if (line.length() > LONGEST || line.isBlank()) {
        continue;
      }
      HeadText said = HeadText.of("", line);
      if (discipline == null) {
        discipline = catalogue.byHeader(line).map(match -> match.discipline()).orElse(null);
        if (discipline != null) {
          window = SpeedWindow.in(line).orElse(window);
        }
      }
      surface = surface == null ? surface(line) : surface;
      String bare = said.window() == null ? line : line.replace(said.window().text(), " ");
      unit = unit == null ? unit(bare) : unit;
      window = window == null ? said.window() : window;
      better = better == 0 ? said.better() : better;
      base = base == HeadText.Base.NONE ? said.base() : base;
    }
    return new TitleWords(discipline, surface, unit, window, better, base);
  }

  private static Unit unit(String line) {
    return UnitWords.inHeader(line).map(UnitWords.Recognised::unit).orElse(null);
  }

  /** The one surface that a text names; short words may be anything in a sentence. */
  static String surface(String text) {
    String words =
        HeaderKey.words(text).stream()
            .filter(word -> word.length() > 2 && !word.equals("led"))
            .collect(Collectors.joining(" "));
    List<String> found = new ArrayList<>();
    for (String surface : SURFACES) {
      if (HeaderParts.in(words, surface)) {
        found.add(surface);
      }
    }
    return found.size() == 1 ? found.get(0) : null;
  }
}
