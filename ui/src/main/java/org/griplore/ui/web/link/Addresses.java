package org.griplore.ui.web.link;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;

/** Builds every address of the explorer: {@code /QUESTION?option=value}. */
public final class Addresses {
  /** Says how much of a long table a page shows; no option of any question. */
  public static final String ROWS = "rows";

  public static final String ALL = "all";

  /** What is remembered of tables' columns. */
  public static final String COLUMNS = "/columns";

  private Addresses() {}

  /** The page of an answer, with the options as they were given. */
  public static String page(Inquiry inquiry) {
    return of(inquiry.kind(), "", inquiry.options());
  }

  /** The page of an answer with every row of its table. */
  public static String whole(Inquiry inquiry) {
    return with(inquiry, ROWS, ALL);
  }

  /** The same answer in another form: {@code json}, {@code csv}, {@code md}. */
  public static String form(Inquiry inquiry, String ending) {
    return of(inquiry.kind(), "." + ending, inquiry.options());
  }

  /** The same question with one option given these values instead; none takes the option away. */
  public static String with(Inquiry inquiry, String option, String... values) {
    return with(inquiry.kind(), inquiry.options(), option, values);
  }

  public static String with(
      String kind, Map<String, List<String>> options, String option, String... values) {
    Map<String, List<String>> changed = new LinkedHashMap<>(options);
    changed.put(option, List.of(values));
    return of(kind, "", changed);
  }

  /** The page to write a note on a {@code test} or a {@code model}. */
  public static String note(String on, String name) {
    return of("note", "", Map.of(on, List.of(name)));
  }

  /** The page of a model: its record. */
  public static String model(String name) {
    return of("model", "", Map.of("model", List.of(name)));
  }

  /** The page of a line: its generations. */
  public static String line(String name) {
    return of("line", "", Map.of("line", List.of(name)));
  }

  /** The page of a test. */
  public static String test(String key) {
    return of("test", "", Map.of("test", List.of(key)));
  }

  /** The tests that have a discipline. */
  public static String discipline(String key) {
    return of("tests", "", Map.of("discipline", List.of(key)));
  }

  /** The tests of a year that have a discipline. */
  public static String holding(String discipline, int year) {
    Map<String, List<String>> options = new LinkedHashMap<>();
    options.put("discipline", List.of(discipline));
    options.put("from", List.of(String.valueOf(year)));
    options.put("to", List.of(String.valueOf(year)));
    return of("tests", "", options);
  }

  /** Where a result comes from. */
  public static String result(long number) {
    return of("origin", "", Map.of("result", List.of(String.valueOf(number))));
  }

  /** What one reading of a file told. */
  static String reading(int revision) {
    return of("revision", "", Map.of("revision", List.of(String.valueOf(revision))));
  }

  /** The page of the question that a figure leads to. */
  public static String of(Lead lead) {
    return of(lead.question(), lead.options());
  }

  /** Any question's page with options. */
  public static String of(String kind, Map<String, List<String>> options) {
    return of(kind, "", options);
  }

  /** A question's address with an ending like {@code .json}, or none. */
  public static String of(String kind, String ending, Map<String, List<String>> options) {
    StringBuilder address = new StringBuilder("/").append(kind).append(ending);
    char before = '?';
    for (Map.Entry<String, List<String>> option : options.entrySet()) {
      for (String value : option.getValue()) {
        address.append(before).append(encoded(option.getKey())).append('=').append(encoded(value));
        before = '&';
      }
    }
    return address.toString();
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
