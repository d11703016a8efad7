package org.griplore.store.names;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.store.names.EntryWords.Kind;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.TyreState.Wear;
import org.griplore.store.vocabulary.Variant;

/**
 * Reads one written name. Sizes, measures and marks are taken out where they stand; what is left
 * falls into segments, set apart by brackets, dashes and commas. A segment of nothing but
 * descriptions is a description; in others descriptions are taken from the end, and a worn state
 * from the beginning too.
 */
final class EntryNameReader {
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}]+|\\p{Nd}+");
  private static final Pattern MARK =
      Pattern.compile(
          "(?<![\\p{L}\\p{Nd}])(?:M ?[+&] ?S|3 ?PMSF|DOT ?:? ?\\d{2} ?/? ?\\d{2})(?![\\p{L}\\p{Nd}])",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern SET =
      Pattern.compile(
          "(?<=[(\\[,;|\u2013\u2014-] ?)(?:set|satz|sample|muster|jeu|prov|#|nr\\.?|no\\.?) ?\\d{1,2}"
              + "(?![\\p{L}\\p{Nd}])",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern APART =
      Pattern.compile(
          "[()\\[\\]{}\uff08\uff09\u3010\u3011;|]| [-\u2013\u2014/:\u00b7\u2022] |,(?!\\p{Nd})"
              + "|[\u2013\u2014] | [\u2013\u2014]");

  private static final List<Kind> DESCRIPTIONS =
      List.of(Kind.WORN, Kind.NEW, Kind.EV, Kind.EXTRA_LOAD, Kind.RUN_FLAT, Kind.SEAL);
  private static final List<Kind> BESIDE = List.of(Kind.TREAD, Kind.CONNECTIVE);
  private static final int LONGEST = 4;

  private final String text;
  private final BitSet state = new BitSet();
  private final BitSet variant = new BitSet();
  private final BitSet cut = new BitSet();
  private final Set<Kind> said = EnumSet.noneOf(Kind.class);
  private final StateMeasures measures = new StateMeasures();
  private final List<String> marks = new ArrayList<>();
  private String size;

  private record Word(String folded, int start, int end) {}

  EntryNameReader(String written) {
    this.text = written.replaceAll("[\\s\\u00a0\\u202f\\u3000]+", " ").strip();
  }

  EntryName read() {
    return read(true);
  }

  /** The state alone, of a text that names no tyre. */
  TyreState stateAlone() {
    return read(false).state();
  }

  private EntryName read(boolean named) {
    TyreSize.locate(text)
        .ifPresent(
            within -> {
              size = within.size().toString();
              take(within.start(), within.end());
            });
    marks(MARK);
    marks(SET);
    measures.read(blanked(), match -> take(match.start(), match.end()));
    for (Kind kind : DESCRIPTIONS) {
      unspaced(kind);
    }
    if (measures.any()) {
      unspaced(Kind.TREAD);
    }
    boolean head = named;
    for (List<Word> segment : segments()) {
      if (head) {
        trim(segment);
      } else if (!describes(segment)) {
        trim(segment);
      }
      head = false;
    }
    return result();
  }

  private EntryName result() {
    BitSet both = (BitSet) state.clone();
    both.or(variant);
    String model = without(both);
    TyreState told = measures.state(wear());
    Variant is =
        new Variant(
            said.contains(Kind.EV),
            said.contains(Kind.EXTRA_LOAD),
            said.contains(Kind.RUN_FLAT),
            said.contains(Kind.SEAL));
    if (NameKey.of(model).isEmpty()) {
      return new EntryName(text, text, told, is, size, marks);
    }
    return new EntryName(model, without(state), told, is, size, marks);
  }

  private Wear wear() {
    if (said.contains(Kind.WORN)) {
      return Wear.WORN;
    }
    return said.contains(Kind.NEW) ? Wear.NEW : null;
  }

  private void marks(Pattern pattern) {
    Matcher matcher = pattern.matcher(blanked());
    while (matcher.find()) {
      marks.add(matcher.group());
      take(matcher.start(), matcher.end());
    }
  }

  private void unspaced(Kind kind) {
    for (String word : EntryWords.standard().unspaced(kind)) {
      int at = blanked().indexOf(word);
      if (at > 0 || (at == 0 && text.length() > word.length())) {
        said.add(kind);
        (kind.isVariant() ? variant : state).set(at, at + word.length());
        cut.set(at, at + word.length());
      }
    }
  }

  private void take(int start, int end) {
    state.set(start, end);
    cut.set(start, end);
  }

  /** The text with what was taken out as separators, every place where it was. */
  private String blanked() {
    StringBuilder blanked = new StringBuilder(text);
    cut.stream().forEach(place -> blanked.setCharAt(place, '|'));
    return blanked.toString();
  }

  /** The words that are left, segment by segment; no segment is empty. */
  private List<List<Word>> segments() {
    String rest = blanked();
    BitSet apart = new BitSet();
    Matcher separator = APART.matcher(rest);
    while (separator.find()) {
      apart.set(separator.start(), separator.end());
    }
    List<List<Word>> segments = new ArrayList<>();
    List<Word> segment = new ArrayList<>();
    int last = 0;
    Matcher word = WORD.matcher(rest);
    while (word.find()) {
      if (!segment.isEmpty() && apart.get(last, word.start()).cardinality() > 0) {
        segments.add(segment);
        segment = new ArrayList<>();
      }
      segment.add(new Word(NameKey.of(word.group()), word.start(), word.end()));
      last = word.end();
    }
    if (!segment.isEmpty()) {
      segments.add(segment);
    }
    return segments;
  }

  private static List<String> folded(List<Word> segment) {
    return segment.stream().map(Word::folded).toList();
  }

  /** Takes a segment that is nothing but descriptions; says whether it is one. */
  private boolean describes(List<Word> segment) {
    List<String> folded = folded(segment);
    List<EntryWords.Match> matches = new ArrayList<>();
    boolean any = measures.any();
    for (int at = 0; at < folded.size(); ) {
      EntryWords.Match match = EntryWords.standard().at(folded, at, DESCRIPTIONS);
      any |= match != null;
      match = match == null ? EntryWords.standard().at(folded, at, BESIDE) : match;
      if (match == null) {
        return false;
      }
      matches.add(match);
      at += match.words();
    }
    if (!any) {
      return false;
    }
    int at = 0;
    for (EntryWords.Match match : matches) {
      remove(segment, at, match);
      at += match.words();
    }
    return true;
  }

  private void remove(List<Word> segment, int at, EntryWords.Match match) {
    int start = segment.get(at).start();
    int end = segment.get(at + match.words() - 1).end();
    if (DESCRIPTIONS.contains(match.kind())) {
      said.add(match.kind());
    }
    (match.kind().isVariant() ? variant : state).set(start, end);
  }

  /** Takes descriptions from the end of a name, and a worn state from its beginning. */
  private void trim(List<Word> segment) {
    List<String> folded = folded(segment);
    int end = folded.size();
    boolean removed =
        cut.get(segment.get(end - 1).end()) || cut.get(segment.get(end - 1).end() + 1);
    for (int match = 1; match > 0 && end > 0; end -= match) {
      match = 0;
      for (int words = Math.min(LONGEST, end - 1); words >= 1 && match == 0; words--) {
        EntryWords.Match found = ending(segment, folded, end - words, words, removed);
        if (found != null) {
          match = words;
          removed |= take(segment, end - words, found);
        }
      }
    }
    EntryWords.Match first = EntryWords.standard().at(folded, 0, List.of(Kind.WORN));
    if (first != null && first.words() < end) {
      remove(segment, 0, first);
    }
  }

  /** Takes a description at the end of a name, but leaves an abbreviation in it. */
  private boolean take(List<Word> segment, int at, EntryWords.Match found) {
    if (found.brief()) {
      said.add(found.kind());
      return false;
    }
    remove(segment, at, found);
    return true;
  }

  private EntryWords.Match ending(
      List<Word> segment, List<String> folded, int at, int words, boolean removed) {
    EntryWords.Match found = EntryWords.standard().at(folded, at, DESCRIPTIONS);
    if (found == null && removed) {
      found = EntryWords.standard().at(folded, at, BESIDE);
      boolean name = found != null && isCapital(segment.get(at)) && found.kind() == Kind.CONNECTIVE;
      found = name || isMark(segment.get(at)) ? null : found;
    }
    if (found == null || found.words() != words) {
      return null;
    }
    boolean maybeName =
        found.kind() == Kind.NEW
            && !measures.any()
            && (isCapital(segment.get(at)) || !isCapital(segment.get(0)));
    return maybeName ? null : found;
  }

  /** A single plain letter stands for a mark in a name, not for a word like the French "to". */
  private boolean isMark(Word word) {
    return word.folded().length() == 1 && text.charAt(word.start()) < 128;
  }

  private boolean isCapital(Word word) {
    return Character.isUpperCase(text.codePointAt(word.start()));
  }

  private String without(BitSet removed) {
    if (removed.isEmpty()) {
      return text;
    }
    StringBuilder left = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      left.append(removed.get(i) ? ' ' : text.charAt(i));
    }
    String tidy = left.toString();
    for (String before = ""; !before.equals(tidy); ) {
      before = tidy;
      tidy =
          tidy.replaceAll("[(\\[{\uff08][\\s,;:|/&~\u2013\u2014-]*[)\\]}\uff09]", " ")
              .replaceAll("([(\\[\uff08])[\\s,;:|/]+", "$1")
              .replaceAll("[\\s,;:|/]+([)\\]\uff09])", "$1")
              .replaceAll("\\s+", " ")
              .replaceAll("(?:^| )[,;:|/\u2013\u2014-]+(?= |$)(?=[ ,;:|/\u2013\u2014-]*$)", "")
              .replaceAll("[\\s,;:|/\u2013\u2014]+$|^[\\s,;:|/\u2013\u2014-]+", "")
              .replaceAll("\\.$", "")
              .strip();
    }
    return tidy;
  }
}
