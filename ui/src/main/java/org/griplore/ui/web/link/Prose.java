package org.griplore.ui.web.link;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.Questions;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.question.Question;

/**
 * Sentences of answers as a page shows them: a command between backticks becomes a link that does
 * the same.
 */
public final class Prose {
  private Prose() {}

  /**
   * A part of a sentence.
   *
   * @param address where it leads; null when it is plain text
   */
  public record Piece(String text, String address) {}

  /** A sentence of an answer; options named in it are added to those asked for. */
  public static List<Piece> of(String sentence, Inquiry inquiry) {
    List<Piece> pieces = new ArrayList<>();
    String[] parts = Symbols.set(sentence).split("`", -1);
    for (int i = 0; i < parts.length; i++) {
      boolean command = i % 2 == 1 && i < parts.length - 1;
      if (command) {
        pieces.add(command(parts[i], inquiry));
      } else if (!parts[i].isEmpty()) {
        pieces.add(new Piece(parts[i], null));
      }
    }
    return pieces;
  }

  private static Piece command(String words, Inquiry inquiry) {
    if (words.startsWith("--") && inquiry != null) {
      Map<String, List<String>> options = new LinkedHashMap<>(inquiry.options());
      Map<String, List<String>> named = named(words);
      options.putAll(named);
      String text =
          String.join(
              ", ",
              named.entrySet().stream()
                  .map(option -> option.getKey() + " " + String.join(" and ", option.getValue()))
                  .toList());
      return new Piece(text, Addresses.of(inquiry.kind(), options));
    }
    String kind = words.replaceFirst("^griplore ", "");
    if (words.startsWith("griplore columns")) {
      return new Piece("the page of columns", Addresses.COLUMNS);
    }
    if (words.startsWith("griplore settle")) {
      return new Piece(words, "/settle");
    }
    boolean page = Questions.all().stream().map(Question::kind).anyMatch(kind::equals);
    return page ? new Piece(kind, "/" + kind) : new Piece(words, null);
  }

  private static Map<String, List<String>> named(String words) {
    Map<String, List<String>> named = new LinkedHashMap<>();
    String option = "";
    for (String word : Arrays.asList(words.split("\\s+"))) {
      if (word.startsWith("--")) {
        option = word.substring(2);
        named.computeIfAbsent(option, name -> new ArrayList<>());
      } else {
        named.get(option).add(word);
      }
    }
    return named;
  }
}
