package org.griplore.ui.web;

import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;

/**
 * The pages around one page of a long answer.
 *
 * @param earlier the page before; null on the first
 * @param later the page behind; null on the last
 */
public record Paging(String earlier, String later) {
  /** By the options {@code limit} and {@code skip}; what lies beyond is an exclusion. */
  static Paging of(Answer<?> answer, int usual) {
    Map<String, List<String>> asked = answer.inquiry().options();
    int limit = number(asked, "limit", usual);
    int skip = number(asked, "skip", 0);
    boolean more = answer.excluded().stream().anyMatch(left -> left.reason().contains("--skip"));
    return new Paging(
        skip == 0
            ? null
            : Addresses.with(answer.inquiry(), "skip", String.valueOf(Math.max(0, skip - limit))),
        more ? Addresses.with(answer.inquiry(), "skip", String.valueOf(skip + limit)) : null);
  }

  private static int number(Map<String, List<String>> options, String name, int usual) {
    return options.containsKey(name) ? Integer.parseInt(options.get(name).get(0)) : usual;
  }
}
