package org.griplore.store.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Recognises the unit that a header or a cell names. A speed window ({@code 80-20 km/h}) is a
 * condition and not the unit of the column.
 */
public final class UnitWords {
  /**
   * A unit and the text that named it.
   *
   * @param unit the unit
   * @param found the text as found
   * @param assumed whether the text leaves doubt ({@code %}: of the best or of a reference?) and
   *     the unit is the likeliest meaning only
   */
  public record Recognised(Unit unit, String found, boolean assumed) {}

  private static final Pattern BRACKETED =
      Pattern.compile("\\(((?:[^()]|\\([^()]*\\))*)\\)|\\[([^\\[\\]]*)\\]");
  private static final Pattern NUMBER = Pattern.compile(".*\\d[,.;]?|[-–/]");
  private static final Pattern INTRODUCES =
      Pattern.compile("(?iu)in|en|i|as|als|par|per|.*[,:;]|[/|–-]");
  private static final Pattern CELL =
      Pattern.compile("([^\\d+−-]*?)\\s*[<>≈~±]?\\s*[+−-]?\\d[\\d.,'’\\s\\u00a0\\u202f]*(.*)");

  private UnitWords() {}

  /** The likeliest unit of a column whose header or title this is. */
  public static Optional<Recognised> inHeader(String header) {
    return meanings(header).stream().findFirst();
  }

  /** The likeliest unit among those in which the discipline is published. */
  public static Optional<Recognised> inHeader(String header, Discipline discipline) {
    return meanings(header).stream().filter(is -> discipline.accepts(is.unit())).findFirst();
  }

  /** The unit written with a number in a cell ({@code 38,4 m}, {@code € 89}, {@code 7/10}). */
  public static Optional<Recognised> inCell(String cell) {
    return cellMeanings(cell).stream().findFirst();
  }

  /** The unit written with a number, among those in which the discipline is published. */
  public static Optional<Recognised> inCell(String cell, Discipline discipline) {
    return cellMeanings(cell).stream().filter(is -> discipline.accepts(is.unit())).findFirst();
  }

  /** The likeliest unit that a text on its own means, as in a column of units. */
  public static Optional<Recognised> ofText(String text) {
    Optional<Unit> symbol = Unit.ofSymbol(text.strip()).filter(unit -> unit != Unit.NUMBER);
    return symbol.isPresent()
        ? symbol.map(unit -> new Recognised(unit, text.strip(), false))
        : whole(text.strip()).stream().findFirst();
  }

  /** Whether the whole text is a unit and nothing else. */
  public static boolean isUnit(String text) {
    return ofText(text).isPresent();
  }

  private static List<Recognised> cellMeanings(String cell) {
    Matcher parts = CELL.matcher(cell.strip());
    if (!parts.matches()) {
      return List.of();
    }
    List<Recognised> all = new ArrayList<>(whole(strip(parts.group(2))));
    all.addAll(whole(strip(parts.group(1))));
    return all;
  }

  private static String strip(String text) {
    String bare = text.strip();
    boolean bracketed = bare.startsWith("(") && bare.endsWith(")");
    return bracketed ? bare.substring(1, bare.length() - 1).strip() : bare;
  }

  /** All readings, the surest place first: brackets, alone, after "in" or a comma, anywhere. */
  private static List<Recognised> meanings(String header) {
    List<Recognised> all = new ArrayList<>(whole(header.strip()));
    Matcher brackets = BRACKETED.matcher(header);
    while (brackets.find()) {
      String inner = brackets.group(1) != null ? brackets.group(1) : brackets.group(2);
      List<Recognised> alone = whole(inner.strip());
      all.addAll(alone.isEmpty() ? within(inner, true) : alone);
    }
    all.addAll(within(header, false));
    return all;
  }

  private static List<Recognised> whole(String text) {
    UnitSpellings.Meaning meaning = text.isEmpty() ? null : UnitSpellings.of(text);
    return meaning == null ? List.of() : recognised(meaning, text);
  }

  private static List<Recognised> within(String text, boolean startIntroduces) {
    String[] words = text.strip().split("[\\s\\u00a0\\u202f]+");
    List<Recognised> expected = new ArrayList<>();
    List<Recognised> anywhere = new ArrayList<>();
    for (int start = words.length - 1; start >= 0; start--) {
      String before = start == 0 ? "" : words[start - 1];
      boolean introduced = start == 0 ? startIntroduces : INTRODUCES.matcher(before).matches();
      if (start > 0 && NUMBER.matcher(before).matches() && !before.endsWith(",") && !introduced) {
        continue;
      }
      for (int end = Math.min(words.length, start + 4); end > start; end--) {
        String found = String.join(" ", List.of(words).subList(start, end));
        String bare = found.replaceAll("[,;:]$", "");
        UnitSpellings.Meaning meaning = UnitSpellings.of(bare);
        if (meaning != null && (introduced || !meaning.shy())) {
          (introduced ? expected : anywhere).addAll(recognised(meaning, bare));
          break;
        }
      }
    }
    expected.addAll(anywhere);
    return expected;
  }

  private static List<Recognised> recognised(UnitSpellings.Meaning meaning, String found) {
    return meaning.units().stream()
        .map(unit -> new Recognised(unit, found, meaning.assumed()))
        .toList();
  }
}
