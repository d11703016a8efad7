package org.griplore.store.names;

import java.util.Locale;
import java.util.Random;

/** Names of tyres drawn from a seed; none is meant to be a real one. */
final class InventedNames {
  private static final String[] BEGINNINGS = {
    "Vel", "Bran", "Quil", "Zor", "Hja", "Dre", "Ost", "Kir", "Lav", "Mul", "Fenn", "Ges", "Tro",
    "Wul", "Nars"
  };
  private static final String[] MIDDLES = {
    "mo", "va", "ri", "le", "tta", "nno", "zu", "ska", "bi", "do", "pe", "go", "lli", "rra", "fu",
    "mme"
  };
  private static final String[] ENDS = {
    "ra", "nox", "tis", "len", "vik", "dor", "lan", "mar", "gon", "ris", "tal", "nek", "zan", "bor",
    "lum"
  };
  private static final String[] MARKS = {
    "", "2", "3", "4", "11", "12", "S-100", "AS2", "W5", "II", "III", "Evo", "Evo 2", "2018"
  };

  private final Random random;

  InventedNames(Random random) {
    this.random = random;
  }

  String maker() {
    return word(1);
  }

  /** A line of one word of eight letters or so. */
  String line() {
    return word(1 + random.nextInt(2));
  }

  String mark() {
    return pick(MARKS);
  }

  private String word(int middles) {
    StringBuilder word = new StringBuilder(pick(BEGINNINGS));
    for (int i = 0; i < middles; i++) {
      word.append(pick(MIDDLES));
    }
    return word.append(pick(ENDS)).toString();
  }

  String pick(String... of) {
    return of[random.nextInt(of.length)];
  }

  /** A letter that is no numeral. */
  char letter() {
    return "abcdefghklmnoprstuwyz".charAt(random.nextInt(21));
  }

  /** Another letter than this one. */
  char letterBut(char letter) {
    char other = letter();
    return other == letter ? letterBut(letter) : other;
  }

  String name(String maker, String line, String mark) {
    return (maker + " " + line + " " + mark).strip();
  }

  /** A place inside a word, neither its first letter nor its last two. */
  int inside(String word) {
    return 1 + random.nextInt(word.length() - 3);
  }

  /** Another way of writing the same word. */
  String misspelt(String word, Slip slip) {
    int at = inside(word);
    return switch (slip) {
      case SWAPPED -> {
        while (Character.toLowerCase(word.charAt(at))
            == Character.toLowerCase(word.charAt(at + 1))) {
          at = inside(word);
        }
        yield word.substring(0, at)
            + word.charAt(at + 1)
            + word.charAt(at)
            + word.substring(at + 2);
      }
      case DOUBLED -> word.substring(0, at + 1) + word.charAt(at) + word.substring(at + 1);
      case UNDOUBLED -> word.replaceFirst("(\\p{L})\\1", "$1");
      case LEFT_OUT -> word.substring(0, at) + word.substring(at + 1);
      case VOWEL -> {
        while ("aeiou".indexOf(word.charAt(at)) < 0) {
          at = at < word.length() - 2 ? at + 1 : 1;
        }
        yield word.substring(0, at) + (word.charAt(at) == 'e' ? 'i' : 'e') + word.substring(at + 1);
      }
      case ZERO -> {
        int o = word.indexOf('o', 1);
        yield o < 1 || o == word.length() - 1
            ? word
            : word.substring(0, o) + "0" + word.substring(o + 1);
      }
      case RUN_TOGETHER, CAPITALS, HYPHEN, UMLAUT -> word;
    };
  }

  /** What goes wrong in writing a name. */
  enum Slip {
    SWAPPED,
    DOUBLED,
    UNDOUBLED,
    LEFT_OUT,
    VOWEL,
    ZERO,
    RUN_TOGETHER,
    CAPITALS,
    HYPHEN,
    UMLAUT
  }

  String written(String maker, String line, String mark, Slip slip) {
    String name = name(maker, misspelt(line, slip), mark);
    return switch (slip) {
      case RUN_TOGETHER -> name.replaceFirst(" ", "");
      case CAPITALS -> name.toUpperCase(Locale.ROOT);
      case HYPHEN -> name.replace(' ', '-');
      case UMLAUT -> name.replace("o", "oe").replace("u", "ue");
      default -> name;
    };
  }
}
