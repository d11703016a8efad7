package org.griplore.store.names;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.NameKey;

/**
 * Words in many languages that say in what state, or as which variant, a tyre was tested, as {@code
 * entry-words.json} lists them.
 */
final class EntryWords {
  private static final EntryWords STANDARD = read();

  private final Map<Kind, Map<String, List<Listed>>> byFirst = new EnumMap<>(Kind.class);
  private final Map<Kind, List<Listed>> open = new EnumMap<>(Kind.class);
  private final Map<Kind, List<String>> spelled = new EnumMap<>(Kind.class);
  private final Map<Kind, List<String>> unspaced = new EnumMap<>(Kind.class);

  /** What a word says. */
  enum Kind {
    WORN("worn"),
    NEW("new"),
    TREAD("tread"),
    CONNECTIVE("connective"),
    YEARS("years"),
    EV("ev"),
    EXTRA_LOAD("extra-load"),
    RUN_FLAT("run-flat"),
    SEAL("seal");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    boolean isVariant() {
      return ordinal() >= EV.ordinal();
    }
  }

  /**
   * A phrase as listed.
   *
   * @param brief an abbreviation that could as well be part of a model's name
   */
  private record Listed(List<String> words, boolean openEnd, boolean brief) {
    /** Whether the words from a place on are this phrase. */
    boolean fits(List<String> folded, int at) {
      if (at + words.size() > folded.size()) {
        return false;
      }
      for (int i = 0; i < words.size(); i++) {
        String word = folded.get(at + i);
        boolean last = i == words.size() - 1;
        if (last && openEnd ? !word.startsWith(words.get(i)) : !word.equals(words.get(i))) {
          return false;
        }
      }
      return true;
    }
  }

  /**
   * A phrase found.
   *
   * @param words how many words it takes
   * @param brief whether it is an abbreviation that could as well be part of a model's name
   */
  record Match(Kind kind, int words, boolean brief) {}

  private EntryWords() {}

  static EntryWords standard() {
    return STANDARD;
  }

  /** The longest phrase of some kinds that begins at a word; null when there is none. */
  Match at(List<String> folded, int place, List<Kind> kinds) {
    Match best = null;
    for (Kind kind : kinds) {
      List<Listed> exact =
          byFirst.getOrDefault(kind, Map.of()).getOrDefault(folded.get(place), List.of());
      for (List<Listed> phrases : List.of(exact, open.getOrDefault(kind, List.of()))) {
        for (Listed listed : phrases) {
          if (listed.fits(folded, place)
              && (best == null || listed.words().size() > best.words())) {
            best = new Match(kind, listed.words().size(), listed.brief());
          }
        }
      }
    }
    return best;
  }

  /** Words of a kind that need no blanks around them. */
  List<String> unspaced(Kind kind) {
    return unspaced.getOrDefault(kind, List.of());
  }

  /** The words of a kind as they are listed. */
  List<String> spelled(Kind kind) {
    return spelled.getOrDefault(kind, List.of());
  }

  private void add(Kind kind, String notation, boolean brief) {
    spelled.computeIfAbsent(kind, k -> new ArrayList<>()).add(notation);
    boolean openEnd = notation.endsWith("*");
    String text = openEnd ? notation.substring(0, notation.length() - 1) : notation;
    if (text.charAt(0) >= '\u3000' && text.charAt(0) < '\uff00') {
      unspaced.computeIfAbsent(kind, k -> new ArrayList<>()).add(text);
      return;
    }
    Listed listed = new Listed(NameKey.words(text), openEnd, brief);
    if (openEnd && listed.words().size() == 1) {
      open.computeIfAbsent(kind, k -> new ArrayList<>()).add(listed);
    } else {
      byFirst
          .computeIfAbsent(kind, k -> new HashMap<>())
          .computeIfAbsent(listed.words().get(0), first -> new ArrayList<>())
          .add(listed);
    }
  }

  private static EntryWords read() {
    try (InputStream in = EntryWords.class.getResourceAsStream("entry-words.json")) {
      JsonNode kinds = new ObjectMapper().readTree(in);
      EntryWords words = new EntryWords();
      for (Kind kind : Kind.values()) {
        kinds
            .get(kind.key)
            .properties()
            .forEach(
                language ->
                    language
                        .getValue()
                        .forEach(
                            word ->
                                words.add(kind, word.asText(), language.getKey().equals("short"))));
      }
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
