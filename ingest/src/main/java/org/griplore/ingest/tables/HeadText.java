package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.store.vocabulary.HeaderKey;

/**
 * What a header says beside the discipline: speeds, which run or statistic, which way is better,
 * what 100 or 0 is, new or worn, measured or declared.
 *
 * @param window the speeds; null when none are named
 * @param statistic which of several figures of one thing
 * @param run the number of the run; 0 when it is none
 * @param better 1 when it says that more is better, -1 when less is, 0 when it does not say
 * @param base what the figures are told from
 * @param state new or worn, as said
 * @param tread the tread depth that is named with a worn state, as found; empty when none is
 * @param kind who says the figures
 * @param core the words that are left: the discipline's, if it names one
 */
record HeadText(
    SpeedWindow window,
    Statistic statistic,
    int run,
    int better,
    Base base,
    State state,
    String tread,
    Kind kind,
    String core) {
  enum Statistic {
    NONE,
    MEAN,
    BEST,
    WORST,
    RUN
  }

  enum Base {
    NONE,
    /** Points or anything else lost: 0 is best. */
    LOST,
    /** The difference to the best, a reference or the one before. */
    DELTA,
    /** Per cent of a reference, which has 100. */
    INDEX_OF_REFERENCE,
    /** Per cent of the best, which has 100. */
    INDEX_OF_BEST,
    /** An index of which nothing more is said. */
    INDEX,
    /** 1 is best. */
    MARK
  }

  enum State {
    UNSAID,
    NEW,
    WORN
  }

  enum Kind {
    MEASURED,
    DECLARED,
    CLAIMED
  }

  private static final Pattern CONSUMED =
      Pattern.compile("(?i)energ|fuel|consum|verbrauch|strom|kwh|l/100");
  private static final Pattern HUNDRED =
      Pattern.compile(
          "(?:([\\p{L} .]{2,25}?)\\s*(?:=|:|\u2259)\\s*100\\s*%?)|(?:100\\s*%?\\s*(?:=|:)\\s*([\\p{L} .]{2,25}))");
  private static final Pattern BEST_IS =
      Pattern.compile("(?<![\\d.,])(0|1|10|100)\\s*(?:=|:|is|ist|est|\u00e4r)\\s*([\\p{L}]{2,15})");
  private static final Pattern TREAD = Pattern.compile("(\\d{1,2}(?:[.,]\\d)?)\\s*mm");
  private static final Pattern RUN_LAST =
      Pattern.compile("^(.*?)(?:^|[\\s#.\u2116]|(?<=\\p{L}))#?(\\d{1,2})\\s*[.)\u00ba\u00b0]?$");
  private static final Pattern RUN_FIRST =
      Pattern.compile(
          "^(\\d{1,2})\\s*[.:)\u00ba\u00b0]?\\s*(?:st|nd|rd|th|er|e|\u00e8me)?\\s*(\\p{L}[\\p{L}. ]*)$");

  /**
   * Reads the texts over a column.
   *
   * @param upper the words of all rows but the lowest; empty when there is one row
   * @param own the words of the lowest row
   */
  static HeadText of(String upper, String own) {
    String all = (upper + " " + own).strip();
    SpeedWindow window = SpeedWindow.in(own).or(() -> SpeedWindow.in(upper)).orElse(null);
    String rest = window == null ? all : all.replace(window.text(), " ");
    String ownRest = window == null ? own : own.replace(window.text(), " ");
    int run = run(ownRest.strip());
    Base base = base(all);
    int better = better(all, base);
    State state = state(rest);
    Kind kind =
        TableWords.CLAIMED.in(rest)
            ? Kind.CLAIMED
            : TableWords.DECLARED.in(rest) ? Kind.DECLARED : Kind.MEASURED;
    Statistic statistic = run > 0 ? Statistic.RUN : statistic(ownRest, better, base);
    if (run > 0) {
      rest = upper.isEmpty() ? discipline(ownRest) : upper + " " + discipline(ownRest);
    }
    return new HeadText(
        window,
        statistic,
        run,
        better,
        base,
        state,
        state == State.WORN ? tread(rest) : "",
        kind,
        core(rest));
  }

  /** What stands before the number of the run, where it is more than a word for runs. */
  private static String discipline(String own) {
    Matcher last = RUN_LAST.matcher(own.strip());
    if (!last.matches()) {
      return "";
    }
    List<String> words = new ArrayList<>(HeaderKey.words(last.group(1)));
    words.removeIf(word -> TableWords.RUN.at(List.of(word), 0) > 0);
    return String.join(" ", words);
  }

  /** The run's number; 0 when the text names no run. A bare number is left to the caller. */
  private static int run(String own) {
    Matcher last = RUN_LAST.matcher(own);
    if (last.matches() && !last.group(1).isBlank()) {
      List<String> words = HeaderKey.words(last.group(1));
      String word = words.isEmpty() ? "" : words.get(words.size() - 1);
      boolean alone = words.size() == 1 && last.group(1).strip().matches("[\\p{L}#.\u2116 ]+");
      boolean apart = word.length() > 2 && own.matches(".*[\\s#.\u2116]\\d{1,2}\\D?$");
      if ((alone || apart) && TableWords.RUN.is(word)) {
        return Integer.parseInt(last.group(2));
      }
    }
    Matcher first = RUN_FIRST.matcher(own);
    if (first.matches() && TableWords.RUN.is(first.group(2))) {
      return Integer.parseInt(first.group(1));
    }
    return 0;
  }

  private static Statistic statistic(String own, int better, Base base) {
    if (better != 0 || base != Base.NONE) {
      return Statistic.NONE;
    }
    if (TableWords.MEAN.in(own) || own.contains("\u00d8") || TableWords.MEDIAN.in(own)) {
      return Statistic.MEAN;
    }
    if (TableWords.BEST.in(own) || TableWords.MIN.in(own)) {
      return Statistic.BEST;
    }
    return TableWords.WORST.in(own) || TableWords.MAX.in(own) ? Statistic.WORST : Statistic.NONE;
  }

  private static Base base(String all) {
    Matcher hundred = HUNDRED.matcher(all);
    if (hundred.find()) {
      String what = hundred.group(1) != null ? hundred.group(1) : hundred.group(2);
      if (TableWords.REFERENCE.in(what)) {
        return Base.INDEX_OF_REFERENCE;
      }
      return TableWords.BETTER.in(what) ? Base.INDEX_OF_BEST : Base.INDEX;
    }
    Matcher best = BEST_IS.matcher(all);
    if (best.find() && TableWords.BETTER.in(best.group(2))) {
      switch (best.group(1)) {
        case "0":
          return Base.LOST;
        case "1":
          return Base.MARK;
        default:
          return Base.NONE;
      }
    }
    if (TableWords.LOST.in(all)) {
      return Base.LOST;
    }
    if (TableWords.INDEX.in(all)) {
      return TableWords.REFERENCE.in(all) ? Base.INDEX_OF_REFERENCE : Base.INDEX;
    }
    return TableWords.DELTA.in(all) || all.contains("\u0394") ? Base.DELTA : Base.NONE;
  }

  private static int better(String all, Base base) {
    if (all.indexOf('\u2193') >= 0 || all.indexOf('\u2191') >= 0) {
      return all.indexOf('\u2193') >= 0 ? -1 : 1;
    }
    if (base == Base.LOST || base == Base.MARK) {
      return -1;
    }
    boolean says = TableWords.BETTER.in(all);
    boolean lower = TableWords.LOWER.in(all);
    boolean higher = TableWords.HIGHER.in(all);
    return says && lower != higher ? lower ? -1 : 1 : 0;
  }

  /** What is said of the tyres; energy or fuel that is used says nothing of them. */
  private static State state(String rest) {
    boolean worn = TableWords.WORN.in(rest) && !CONSUMED.matcher(rest).find();
    boolean fresh = TableWords.NEW.in(rest);
    return worn == fresh ? State.UNSAID : worn ? State.WORN : State.NEW;
  }

  private static String tread(String rest) {
    Matcher tread = TREAD.matcher(rest);
    return tread.find() ? tread.group(1) : "";
  }

  private static final List<TableWords> MODIFIERS =
      List.of(
          TableWords.MEAN,
          TableWords.MEDIAN,
          TableWords.BEST,
          TableWords.WORST,
          TableWords.MIN,
          TableWords.MAX,
          TableWords.LOWER,
          TableWords.HIGHER,
          TableWords.BETTER,
          TableWords.INDEX,
          TableWords.REFERENCE,
          TableWords.DECLARED,
          TableWords.CLAIMED,
          TableWords.NEW,
          TableWords.WORN);

  private static String core(String rest) {
    List<String> words = HeaderKey.words(rest);
    StringBuilder core = new StringBuilder();
    for (int i = 0; i < words.size(); ) {
      int modifies = 0;
      for (TableWords kind : MODIFIERS) {
        modifies = Math.max(modifies, kind.at(words, i));
      }
      if (modifies == 0) {
        core.append(core.isEmpty() ? "" : " ").append(words.get(i));
      }
      i += Math.max(1, modifies);
    }
    return core.toString();
  }
}
