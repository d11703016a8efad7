package org.griplore.store.vocabulary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A phrase sought in headers: all its words must stand in the header, in any order, each on a word
 * of its own. {@code nass*} is any word that begins so, {@code *gewicht} any that ends so, {@code
 * *gewicht*} any that holds it. {@code ?braking} is vague: it counts only where no other phrase is
 * found. Words are compared by {@link HeaderKey}.
 */
public final class HeaderPhrase {
  private record Word(String letters, boolean openStart, boolean openEnd) {
    boolean fits(String word) {
      if (openStart) {
        return openEnd ? word.contains(letters) : word.endsWith(letters);
      }
      return openEnd ? word.startsWith(letters) : word.equals(letters);
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

  private final List<Word> words;
  private final int letters;
  private final boolean vague;

  private HeaderPhrase(List<Word> words, boolean vague) {
    this.vague = vague;
    this.words = words;
    this.letters = words.stream().mapToInt(word -> word.letters().length()).sum();
  }

  /**
   * Reads the notation.
   *
   * @throws IllegalArgumentException when the phrase has no letters
   */
  public static HeaderPhrase of(String notation) {
    List<Word> words = new ArrayList<>();
    boolean vague = notation.startsWith("?");
    for (String part : notation.substring(vague ? 1 : 0).strip().split("[\\s'’/-]+")) {
      String letters = HeaderKey.fold(part.replace("*", ""));
      if (letters.isEmpty() || !letters.chars().allMatch(Character::isLetterOrDigit)) {
        throw new IllegalArgumentException("not a phrase of words: " + notation);
      }
      words.add(new Word(letters, part.startsWith("*"), part.endsWith("*")));
    }
    return new HeaderPhrase(List.copyOf(words), vague);
  }

  /** Seeks the phrase among a header's words (see {@link HeaderKey#words}). */
  public Optional<Hit> in(List<String> header) {
    int run = together(header);
    if (run >= 0) {
      return Optional.of(
          new Hit(header.subList(run, run + words.size()), letters, true, run, vague));
    }
    boolean[] taken = new boolean[header.size()];
    for (Word word : words) {
      int at = free(word, header, taken);
      if (at < 0) {
        return Optional.empty();
      }
      taken[at] = true;
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

  private int together(List<String> header) {
    for (int start = 0; start + words.size() <= header.size(); start++) {
      int i = 0;
      while (i < words.size() && words.get(i).fits(header.get(start + i))) {
        i++;
      }
      if (i == words.size()) {
        return start;
      }
    }
    return -1;
  }

  private static int free(Word word, List<String> header, boolean[] taken) {
    for (int i = 0; i < taken.length; i++) {
      if (!taken[i] && word.fits(header.get(i))) {
        return i;
      }
    }
    return -1;
  }
}
