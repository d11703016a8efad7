package org.griplore.ingest.grid.text;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Finds the delimiter of a text: the one that cuts most of its first lines into the same number of
 * fields, outside quotes, more fields counting for more. A title or details above the table do not
 * count against it; running text with commas in it is no table.
 */
public final class DelimiterFinder {
  private static final char[] DELIMITERS = {'\t', ';', ',', '|'};
  private static final int LINES_LOOKED_AT = 60;
  private static final int WORDS_OF_RUNNING_TEXT = 8;
  private static final Pattern FIGURE =
      Pattern.compile("[<>~\u2248]?\\s*[-+\u2212]?\\d[\\d.,:]*\\s*\\S{0,6}");

  /**
   * What a delimiter makes of the first lines.
   *
   * @param delimiter the delimiter
   * @param fields the commonest number of fields, two or more
   * @param rows how many lines have it
   * @param share those lines among all that are not empty
   * @param figures how many of those lines hold a figure
   * @param wordy share of all lines that have eight words or more
   */
  public record Candidate(
      char delimiter, int fields, int rows, double share, int figures, double wordy) {
    double score() {
      return share * share * Math.sqrt(fields) * (fields >= 3 ? 2 : 1);
    }

    private boolean isRunningText() {
      boolean mostlyFigures = 2 * figures >= rows;
      return !mostlyFigures
          && (wordy > 0.5 && share < 0.9 || share < 0.5 && (fields == 2 || delimiter == ','));
    }

    /** Whether it is a table even in a text that has marks of Markdown, as comments have. */
    public boolean isPlain() {
      return fields >= 3 && share >= 0.6 && 2 * figures >= rows;
    }
  }

  private DelimiterFinder() {}

  /**
   * The best candidate; empty when the text is no table.
   *
   * @param start the text's beginning
   * @param brokenOff whether more follows, so that the last line may not be whole
   */
  public static Optional<Candidate> find(String start, boolean brokenOff) throws IOException {
    List<Candidate> candidates = new ArrayList<>();
    for (char delimiter : DELIMITERS) {
      candidate(start, delimiter, brokenOff)
          .filter(candidate -> !candidate.isRunningText())
          .ifPresent(candidates::add);
    }
    if (candidates.size() > 1 && commasAreDecimal(start)) {
      candidates.removeIf(
          candidate ->
              candidate.delimiter() == ','
                  && candidates.stream().anyMatch(c -> c.delimiter() != ',' && c.share() >= 0.5));
    }
    Candidate best = null;
    for (Candidate candidate : candidates) {
      best = best == null || candidate.score() > best.score() ? candidate : best;
    }
    return Optional.ofNullable(best);
  }

  private static Optional<Candidate> candidate(String start, char delimiter, boolean brokenOff)
      throws IOException {
    List<List<String>> lines = new ArrayList<>();
    try (RecordReader records = RecordReader.ofBeginning(new StringReader(start), delimiter)) {
      while (lines.size() < LINES_LOOKED_AT && records.next()) {
        List<String> fields = new ArrayList<>();
        for (int i = 0; i < records.count(); i++) {
          fields.add(records.field(i).strip());
        }
        if (fields.size() > 1 || !fields.get(0).isEmpty()) {
          lines.add(fields);
        }
      }
    }
    if (brokenOff && lines.size() > 1 && lines.size() < LINES_LOOKED_AT) {
      lines.remove(lines.size() - 1);
    }
    Map<Integer, Integer> linesByFields = new HashMap<>();
    lines.forEach(fields -> linesByFields.merge(fields.size(), 1, Integer::sum));
    return linesByFields.entrySet().stream()
        .filter(entry -> entry.getKey() >= 2 && entry.getValue() >= 2)
        .map(entry -> of(delimiter, entry.getKey(), lines))
        .max(java.util.Comparator.comparingDouble(Candidate::score));
  }

  private static Candidate of(char delimiter, int count, List<List<String>> lines) {
    int rows = 0;
    int figures = 0;
    int wordy = 0;
    for (List<String> fields : lines) {
      int words = fields.stream().mapToInt(field -> field.split("\\s+").length).sum();
      wordy += words >= WORDS_OF_RUNNING_TEXT + fields.size() - 1 ? 1 : 0;
      if (fields.size() == count) {
        rows++;
        figures += fields.stream().anyMatch(f -> FIGURE.matcher(f).matches()) ? 1 : 0;
      }
    }
    return new Candidate(
        delimiter,
        count,
        rows,
        (double) rows / lines.size(),
        figures,
        (double) wordy / lines.size());
  }

  /** Whether most commas stand between two digits. */
  private static boolean commasAreDecimal(String text) {
    int commas = 0;
    int decimal = 0;
    for (int at = text.indexOf(','); at >= 0; at = text.indexOf(',', at + 1)) {
      commas++;
      boolean between =
          at > 0
              && at + 1 < text.length()
              && Character.isDigit(text.charAt(at - 1))
              && Character.isDigit(text.charAt(at + 1));
      decimal += between ? 1 : 0;
    }
    return 2 * decimal > commas;
  }
}
