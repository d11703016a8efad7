package org.griplore.store.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.griplore.store.vocabulary.Phrase;

/**
 * The words of every code, from {@code phrases.txt}: the one place where what is kept of findings,
 * rules, reductions and changes gets its wording.
 */
public final class PhraseBook {
  private static final String BETWEEN = "; ";
  private static final PhraseBook BOOK = read();

  private final Map<String, Template> templates = new LinkedHashMap<>();
  private final Map<String, Phrase> plain = new LinkedHashMap<>();
  private final List<Template> withGaps = new ArrayList<>();

  private PhraseBook() {}

  /** The words of a phrase; a code this program does not know is shown with its parameters. */
  public static String words(Phrase phrase) {
    if (phrase.code().equals(Phrase.TOLD) && phrase.parameters().size() == 1) {
      return phrase.parameters().get(0);
    }
    Template template = BOOK.templates.get(phrase.code());
    return template == null || template.gaps() != phrase.parameters().size()
        ? (phrase.code() + " " + String.join(", ", phrase.parameters())).strip()
        : template.filled(phrase.parameters());
  }

  /** The phrase whose words these are; {@link Phrase#told} where none has a code. */
  public static Phrase phrase(String words) {
    Phrase known = BOOK.plain.get(words);
    if (known != null) {
      return known;
    }
    for (Template template : BOOK.withGaps) {
      List<String> parameters = template.parameters(words);
      if (parameters != null) {
        return new Phrase(template.code(), parameters);
      }
    }
    return Phrase.told(words);
  }

  /** The phrases of words that stand side by side, parted by semicolons; none for no words. */
  public static List<Phrase> phrases(String words) {
    if (words.isEmpty()) {
      return List.of();
    }
    List<Phrase> phrases = new ArrayList<>();
    for (String part : words.split(BETWEEN, -1)) {
      phrases.add(phrase(part));
    }
    return phrases;
  }

  /** The words of phrases side by side. */
  public static String words(List<Phrase> phrases) {
    return phrases.stream().map(PhraseBook::words).collect(Collectors.joining(BETWEEN));
  }

  /** All codes, in the order of the book. */
  public static List<String> codes() {
    return List.copyOf(BOOK.templates.keySet());
  }

  private void add(Template template) {
    if (templates.put(template.code(), template) != null) {
      throw new IllegalStateException("phrases.txt has " + template.code() + " twice");
    }
    if (template.gaps() == 0) {
      plain.put(template.filled(List.of()), Phrase.of(template.code()));
    } else {
      withGaps.add(template);
    }
  }

  private static PhraseBook read() {
    PhraseBook book = new PhraseBook();
    try (InputStream in = PhraseBook.class.getResourceAsStream("phrases.txt")) {
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(Template::of)
          .forEach(book::add);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return book;
  }
}
