package org.griplore.ingest.grid.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.Content;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;

/**
 * A conversation as chat programs save it: a time and a name before each line. It is read as notes;
 * a line that corrects a figure said before is a finding, so that nobody takes the earlier one
 * unseen.
 */
public final class Conversation {
  private static final String TIME =
      "\\d{1,2}[:.h]\\d{2}(?:[:.]\\d{2})?(?:\\s?[AaPp]\\.?[Mm]\\.?)?";
  private static final String DATE = "\\d{1,4}[./-]\\d{1,2}[./-]\\d{1,4}";
  private static final Pattern LINE =
      Pattern.compile(
          "\\s*[\\[(]?(?:%s[,\\s]*)?%s[\\])]?\\s*(?:[-\u2013]\\s*)?(?:<([^>]{1,40})>|([^:<>]{1,40}):)\\s*(.*)"
              .formatted(DATE, TIME));
  private static final Pattern LINE_NAME_FIRST =
      Pattern.compile(
          "\\s*([^:\\[(<>]{1,40}?)\\s*[\\[(](?:%s[,\\s]*)?%s[\\])]:?\\s*(.*)"
              .formatted(DATE, TIME));
  private static final Pattern CORRECTS =
      Pattern.compile(
          "(?iu)(?:^\\*|\\*$|\\b(?:correction|corrected|corrigend|sorry|oops|typo|i meant|should be"
              + "|should read|was wrong|is wrong|not right|instead of|actually"
              + "|korrektur|korrigier|falsch|tippfehler|verschrieben|vertippt|muss hei(?:\u00df|ss)en"
              + "|stimmt nicht|sondern|statt|erratum|pardon|d\u00e9sol\u00e9|erreur|plut\u00f4t|au lieu"
              + "|r\u00e4ttelse|fel\\b|ska vara|ist\u00e4llet))");
  private static final Pattern DIGIT = Pattern.compile("\\d");

  private Conversation() {}

  /** The conversation; empty when the lines are none. */
  public static Optional<Content> read(List<Content.Line> lines) {
    List<Content.Line> said = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    long matched = 0;
    long filled = 0;
    for (Content.Line line : lines) {
      filled += line.text().isBlank() ? 0 : 1;
      String text = text(line.text());
      matched += text == null ? 0 : 1;
      String words = text == null ? line.text() : text;
      said.add(new Content.Line(line.number(), words));
      if (CORRECTS.matcher(words).find() && DIGIT.matcher(words).find()) {
        findings.add(correction(line, words));
      }
    }
    return matched >= 3 && 2 * matched >= filled
        ? Optional.of(new Content.Prose(said, findings))
        : Optional.empty();
  }

  /** What was said; null for a line that begins with no time and name. */
  private static String text(String line) {
    if (line.length() > 10_000) {
      return null;
    }
    Matcher first = LINE.matcher(line);
    if (first.matches()) {
      return first.group(3).strip();
    }
    Matcher second = LINE_NAME_FIRST.matcher(line);
    return second.matches() ? second.group(2).strip() : null;
  }

  private static Finding correction(Content.Line line, String words) {
    String shown = words.length() > 200 ? words.substring(0, 200) : words;
    return new Finding(
        Finding.Kind.CONFLICT,
        new Cell("", line.number(), 1, shown),
        shown,
        "a figure said once; this line corrects one said before",
        "look at both lines and add the figure that holds as a table");
  }
}
