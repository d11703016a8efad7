package org.griplore.query.notes;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;

/**
 * How many notes share something.
 *
 * @param by what they share
 * @param value the model's name, the discipline's key or the year
 * @param notes how many there are
 */
public record NoteCount(By by, String value, int notes) {
  /** What notes share. */
  public enum By {
    MODEL("model"),
    DISCIPLINE("discipline"),
    YEAR("from", "to");

    private final List<String> options;

    By(String... options) {
      this.options = List.of(options);
    }

    /** Its word. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  static List<NoteCount> most(By by, Map<String, Integer> counts) {
    return counts.entrySet().stream()
        .map(entry -> new NoteCount(by, entry.getKey(), entry.getValue()))
        .sorted(
            Comparator.comparingInt(NoteCount::notes).reversed().thenComparing(NoteCount::value))
        .toList();
  }

  /** Whether a question about notes is narrowed to these already. */
  public boolean isAsked(Inquiry asked) {
    return by.options.stream()
        .allMatch(name -> asked.options().getOrDefault(name, List.of()).contains(value));
  }

  /** The question narrowed to these notes, or, where it is already, widened again. */
  public Lead narrowed(Inquiry asked) {
    Lead lead = Lead.again(asked).without("skip");
    boolean already = isAsked(asked);
    for (String name : by.options) {
      lead = already ? lead.without(name) : lead.with(name, value);
    }
    return lead;
  }
}
