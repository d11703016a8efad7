package org.griplore.store.vocabulary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A phrase sought in headers: all its words must stand in the header, in any order, each on a word
 * of its own. {@code nass*} is any word that begins so, {@code *gewicht} any that ends so, {@code
 * *gewicht*} any that holds it. {@code ?braking} is vague: it counts only where no other phrase is
 * found. {@code {wet}} is any word of a part ({@link HeaderParts}), and two parts may stand in one
 * word. Words are compared by {@link HeaderKey}.
 */
public final class HeaderPhrase {
  /** What one word of the phrase may be; more than one where it names a part. */
  private record Choice(List<HeaderWord> words) {
    /** Letters of the longest word that fits; 0 when none does. */
    int fits(String word) {
      int most = 0;
      for (HeaderWord each : words) {
        if (each.letters().length() > most && each.fits(word)) {
          most = each.letters().length();
        }
      }
      return most;
    }
  }

  /**
   * Where a phrase was found.
   *
   * @param words the header's words that it fell on, in header order
   * @param letters letters of the phrase: the longer, the surer
   * @param together whether the words stand side by side in the phrase's order
   * @param first 0-based place of the first word
   * @param vague whether the phrase counts only where no other is found
   */
  public record Hit(List<String> words, int letters, boolean together, int first, boolean vague) {
    /** The surest hit first: not vague, longest, side by side, leftmost. */
    public static final Comparator<Hit> SUREST =
        Comparator.comparing(Hit::vague)
            .thenComparing(Hit::letters, Comparator.reverseOrder())
            .thenComparing(hit -> !hit.together())
            .thenComparing(Hit::first);
  }

  private final List<Choice> words;
  private final boolean vague;
  private final boolean parts;

  private HeaderPhrase(List<Choice> words, boolean vague, boolean parts) {
    this.words = words;
    this.vague = vague;
    this.parts = parts;
  }

  /**
   * Reads the notation.
   *
   * @throws IllegalArgumentException when the phrase has no letters, or names a part that is not
   *     there
   */
  public static HeaderPhrase of(String notation) {
    List<Choice> words = new ArrayList<>();
    boolean vague = notation.startsWith("?");
    boolean parts = false;
    for (String part : notation.substring(vague ? 1 : 0).strip().split("[\\s'’/-]+")) {
      if (part.startsWith("{") && part.endsWith("}")) {
        List<HeaderWord> named = HeaderParts.of(part.substring(1, part.length() - 1));
        if (named == null) {
          throw new IllegalArgumentException("no such part: " + notation);
        }
        words.add(new Choice(named));
        parts = true;
      } else {
        words.add(new Choice(List.of(word(part, notation))));
      }
    }
    return new HeaderPhrase(List.copyOf(words), vague, parts);
  }

  private static HeaderWord word(String part, String notation) {
    try {
      return HeaderWord.of(part);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("not a phrase of words: " + notation, e);
    }
  }

  /** Seeks the phrase among a header's words (see {@link HeaderKey#words}). */
  public Optional<Hit> in(List<String> header) {
    for (int start = 0; start + words.size() <= header.size(); start++) {
      int letters = together(header, start);
      if (letters > 0) {
        List<String> found = header.subList(start, start + words.size());
        return Optional.of(new Hit(found, letters, true, start, vague));
      }
    }
    Optional<Hit> compound = parts && words.size() == 2 ? compound(header) : Optional.empty();
    return compound.isPresent() ? compound : apart(header);
  }

  private int together(List<String> header, int start) {
    int letters = 0;
    for (int i = 0; i < words.size(); i++) {
      int fits = words.get(i).fits(header.get(start + i));
      if (fits == 0) {
        return 0;
      }
      letters += fits;
    }
    return letters;
  }

  private Optional<Hit> apart(List<String> header) {
    boolean[] taken = new boolean[header.size()];
    int letters = 0;
    for (Choice word : words) {
      int at = free(word, header, taken);
      if (at < 0) {
        return Optional.empty();
      }
      taken[at] = true;
      letters += word.fits(header.get(at));
    }
    List<String> found = new ArrayList<>();
    int first = -1;
    for (int i = 0; i < taken.length; i++) {
      if (taken[i]) {
        found.add(header.get(i));
        first = first < 0 ? i : first;
      }
    }
    return Optional.of(new Hit(List.copyOf(found), letters, false, first, vague));
  }

  /** Both words in one, as in {@code Nassbremsung} and in writing without blanks. */
  private Optional<Hit> compound(List<String> header) {
    for (int i = 0; i < header.size(); i++) {
      int letters =
          Math.max(
              compound(header.get(i), words.get(0), words.get(1)),
              compound(header.get(i), words.get(1), words.get(0)));
      if (letters > 0) {
        return Optional.of(new Hit(List.of(header.get(i)), letters, true, i, vague));
      }
    }
    return Optional.empty();
  }

  private static int compound(String word, Choice first, Choice second) {
    int most = 0;
    for (HeaderWord head : first.words()) {
      int at = head.runsOn() ? word.indexOf(head.letters()) : 0;
      boolean tooShort = head.letters().length() < 2 && !head.runsOn();
      if (at < 0 || tooShort || !word.startsWith(head.letters(), at)) {
        continue;
      }
      String rest = word.substring(at + head.letters().length());
      for (HeaderWord tail : second.words()) {
        if (ends(rest, tail)) {
          most = Math.max(most, head.letters().length() + tail.letters().length());
        }
      }
    }
    return most;
  }

  /** Up to three letters may link the two words: {@code Märk-ä-jarrutus}. */
  private static boolean ends(String rest, HeaderWord tail) {
    if (tail.runsOn()) {
      return rest.contains(tail.letters());
    }
    int link = tail.openEnd() && tail.letters().length() > 2 ? 3 : 0;
    for (int skip = 0; skip <= link && skip < rest.length(); skip++) {
      if (tail.fits(rest.substring(skip))) {
        return true;
      }
    }
    return false;
  }

  private static int free(Choice word, List<String> header, boolean[] taken) {
    for (int i = 0; i < taken.length; i++) {
      if (!taken[i] && word.fits(header.get(i)) > 0) {
        return i;
      }
    }
    return -1;
  }
}
