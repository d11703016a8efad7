package org.griplore.query.answer;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where a figure leads: the question that shows what stands behind it.
 *
 * @param question the question's word
 * @param options its options, by name
 */
public record Lead(String question, Map<String, List<String>> options) {
  /** To a question without options. */
  public static Lead to(String question) {
    return new Lead(question, Map.of());
  }

  /** To the question that was asked, with the same options. */
  public static Lead again(Inquiry inquiry) {
    return new Lead(inquiry.kind(), inquiry.options());
  }

  /** The same with one option given these values instead. */
  public Lead with(String option, String... values) {
    Map<String, List<String>> more = new LinkedHashMap<>(options);
    more.put(option, List.of(values));
    return new Lead(question, more);
  }

  /** The same with those of these options that it does not have yet. */
  public Lead under(Map<String, List<String>> others) {
    Map<String, List<String>> more = new LinkedHashMap<>(options);
    others.forEach(more::putIfAbsent);
    return new Lead(question, more);
  }

  /** The same without an option. */
  public Lead without(String option) {
    Map<String, List<String>> fewer = new LinkedHashMap<>(options);
    fewer.remove(option);
    return new Lead(question, fewer);
  }

  /** Where any value of a format leads; nowhere for most, and where the value is missing. */
  static Optional<Lead> of(Format format, Object value) {
    if (value == null) {
      return Optional.empty();
    }
    String text = String.valueOf(value);
    return switch (format) {
      case MODEL -> Optional.of(to("model").with("model", text));
      case LINE -> Optional.of(to("line").with("line", text));
      case TEST -> Optional.of(to("test").with("test", text));
      case DISCIPLINE -> Optional.of(to("tests").with("discipline", text));
      case RESULT -> Optional.of(result(((Number) value).longValue()));
      case FIGURE -> Optional.ofNullable(((Figure) value).result()).map(Lead::result);
      default -> Optional.empty();
    };
  }

  /** To where a stored result comes from. */
  public static Lead result(long number) {
    return to("origin").with("result", String.valueOf(number));
  }
}
