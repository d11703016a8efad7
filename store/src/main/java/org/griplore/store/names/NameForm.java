package org.griplore.store.names;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.griplore.store.names.NameDifference.Kind;
import org.griplore.store.vocabulary.NameKey;

/**
 * A way in which a model's name is known to be written, to be compared with names as they are
 * written elsewhere: word by word, in order, where a word may be misspelt, missing, or one too
 * many.
 *
 * @param model the model's full name
 * @param words the words of this way of writing, in their comparing form
 * @param makerWords how many of them, from the first, are the maker's
 */
record NameForm(String model, List<String> words, int makerWords) {
  static NameForm of(String model, String written, String maker) {
    List<String> words = NameKey.words(written);
    List<String> makers = maker == null ? List.of() : NameKey.words(maker);
    boolean begins = words.size() > makers.size() && words.subList(0, makers.size()).equals(makers);
    return new NameForm(model, words, begins ? makers.size() : 0);
  }

  List<String> maker() {
    return words.subList(0, makerWords);
  }

  List<String> withoutMaker() {
    return words.subList(makerWords, words.size());
  }

  /** A written name set beside this one; {@code null} when hardly anything is alike. */
  Candidate compared(List<String> written, double from) {
    Candidate best = compared(written, words, makerWords, null);
    if (makerWords > 0) {
      List<String> alone = withoutMaker();
      best =
          better(best, compared(written, alone, 0, difference(Kind.NO_MAKER, List.of(), maker())));
      List<String> turned = turned(written);
      if (turned != null) {
        NameDifference place = difference(Kind.MAKER_PLACE, maker(), maker());
        best = better(best, compared(turned, words, makerWords, place));
      }
    }
    return best.score() < from ? null : best;
  }

  /** The written words with the maker's brought to the front; null when they do not end so. */
  private List<String> turned(List<String> written) {
    int rest = written.size() - makerWords;
    if (rest < 1 || !written.subList(rest, written.size()).equals(maker())) {
      return null;
    }
    List<String> turned = new ArrayList<>(maker());
    turned.addAll(written.subList(0, rest));
    return turned;
  }

  private static Candidate better(Candidate some, Candidate other) {
    return other.score() > some.score() ? other : some;
  }

  private static NameDifference difference(Kind kind, List<String> written, List<String> known) {
    return new NameDifference(kind, String.join(" ", written), String.join(" ", known));
  }

  private Candidate compared(
      List<String> written, List<String> known, int makers, NameDifference already) {
    Alignment alignment = new Alignment(written, known, makers);
    List<NameDifference> differences = new ArrayList<>();
    if (already != null) {
      differences.add(already);
    }
    differences.addAll(alignment.differences());
    double score = alignment.score() * (already == null ? 1 : already.kind().keeps());
    return new Candidate(model, score, differences);
  }

  /** The likeliest pairing of the words of two names. */
  private static final class Alignment {
    private final List<String> written;
    private final List<String> known;
    private final int makers;
    private final double[][] score;
    private final NameDifference[][] taken;
    private final int[][] step;

    Alignment(List<String> written, List<String> known, int makers) {
      this.written = written;
      this.known = known;
      this.makers = makers;
      this.score = new double[written.size() + 1][known.size() + 1];
      this.taken = new NameDifference[written.size() + 1][known.size() + 1];
      this.step = new int[written.size() + 1][known.size() + 1];
      for (int i = written.size(); i >= 0; i--) {
        for (int j = known.size(); j >= 0; j--) {
          score[i][j] = i == written.size() && j == known.size() ? 1 : 0;
          fill(i, j);
        }
      }
    }

    private void fill(int i, int j) {
      boolean more = i < written.size();
      boolean less = j < known.size();
      if (more && less && written.get(i).equals(known.get(j))) {
        take(i, j, 1, 1, null);
        return;
      }
      if (more && less) {
        boolean last = i == written.size() - 1 || j == known.size() - 1;
        Kind pair = pair(written.get(i), known.get(j), j < makers, last);
        if (pair != null) {
          take(i, j, 1, 1, pair);
        }
        joined(i, j);
      }
      if (more) {
        boolean mark = Spelling.isMark(written.get(i));
        take(i, j, 1, 0, mark ? Kind.MARK_MORE : Kind.WORD_MORE);
      }
      if (less) {
        boolean mark = Spelling.isMark(known.get(j));
        take(i, j, 0, 1, mark ? Kind.MARK_LESS : Kind.WORD_LESS);
      }
    }

    private void joined(int i, int j) {
      for (int some = 1; some <= 3 && i + some <= written.size(); some++) {
        for (int other = 1; other <= 3 && j + other <= known.size(); other++) {
          if (some + other > 2 && (some == 1 || other == 1) && isJoined(i, some, j, other)) {
            take(i, j, some, other, Kind.SPACING);
          }
        }
      }
    }

    private boolean isJoined(int i, int some, int j, int other) {
      String one = String.join("", written.subList(i, i + some));
      return one.chars().noneMatch(Character::isDigit)
          && one.equals(String.join("", known.subList(j, j + other)));
    }

    private void take(int i, int j, int some, int other, Kind kind) {
      double is = score[i + some][j + other] * (kind == null ? 1 : kind.keeps());
      if (is > score[i][j]) {
        score[i][j] = is;
        step[i][j] = 4 * some + other;
        taken[i][j] =
            kind == null
                ? null
                : difference(kind, written.subList(i, i + some), known.subList(j, j + other));
      }
    }

    private static Kind pair(String written, String known, boolean maker, boolean last) {
      if (maker) {
        Kind kind = Spelling.ofMakers(written, known);
        return kind == null && Spelling.isShort(written, known) ? Kind.SHORTENED : kind;
      }
      boolean marks = Spelling.isMark(written) && Spelling.isMark(known);
      if (marks) {
        return Numerals.same(written, known) ? Kind.FIGURES : Kind.OTHER_MARK;
      }
      Kind kind = Spelling.difference(written, known, last);
      return kind == null && Spelling.isShort(written, known) ? Kind.SHORTENED : kind;
    }

    double score() {
      return score[0][0];
    }

    List<NameDifference> differences() {
      List<NameDifference> differences = new ArrayList<>();
      int i = 0;
      int j = 0;
      while (i < written.size() || j < known.size()) {
        if (taken[i][j] != null) {
          differences.add(taken[i][j]);
        }
        int taking = step[i][j];
        i += taking / 4;
        j += taking % 4;
      }
      return differences;
    }
  }

  /** Roman and Arabic figures of one number; such words are marks of a generation. */
  private static final class Numerals {
    private static final Map<Character, Integer> ROMAN = Map.of('i', 1, 'v', 5, 'x', 10);

    static boolean same(String some, String other) {
      Integer one = number(some);
      return one != null && one.equals(number(other));
    }

    private static Integer number(String word) {
      if (word.chars().allMatch(Character::isDigit)) {
        return word.length() > 2 ? null : (Integer) Integer.parseInt(word);
      }
      int sum = 0;
      for (int k = 0; k < word.length(); k++) {
        Integer value = ROMAN.get(word.charAt(k));
        if (value == null) {
          return null;
        }
        Integer next = k + 1 < word.length() ? ROMAN.get(word.charAt(k + 1)) : null;
        sum += next != null && next > value ? -value : value;
      }
      return sum;
    }
  }
}
