package org.griplore.store.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of one code, with gaps.
 *
 * @param code the code
 * @param texts what stands before, between and after the gaps: one more than there are gaps
 * @param pattern matches such words; a gap is as short as can be
 */
record Template(String code, List<String> texts, Pattern pattern) {
  private static final String GAP = "{}";

  /** Reads {@code code: words with {} for each gap}. */
  static Template of(String line) {
    int colon = line.indexOf(": ");
    List<String> texts = new ArrayList<>();
    StringBuilder pattern = new StringBuilder();
    String rest = line.substring(colon + 2);
    for (int gap = rest.indexOf(GAP); gap >= 0; gap = rest.indexOf(GAP)) {
      texts.add(rest.substring(0, gap));
      pattern.append(Pattern.quote(rest.substring(0, gap))).append("(.+?)");
      rest = rest.substring(gap + GAP.length());
    }
    texts.add(rest);
    return new Template(
        line.substring(0, colon),
        List.copyOf(texts),
        Pattern.compile(pattern + Pattern.quote(rest), Pattern.DOTALL));
  }

  int gaps() {
    return texts.size() - 1;
  }

  String filled(List<String> parameters) {
    StringBuilder words = new StringBuilder(texts.get(0));
    for (int i = 0; i < parameters.size(); i++) {
      words.append(parameters.get(i)).append(texts.get(i + 1));
    }
    return words.toString();
  }

  /** What fills the gaps in these words; null when they are not of this code. */
  List<String> parameters(String words) {
    if (!words.startsWith(texts.get(0)) || !words.endsWith(texts.get(gaps()))) {
      return null;
    }
    Matcher matcher = pattern.matcher(words);
    if (!matcher.matches()) {
      return null;
    }
    List<String> parameters = new ArrayList<>();
    for (int i = 1; i <= gaps(); i++) {
      parameters.add(matcher.group(i));
    }
    return parameters;
  }
}
