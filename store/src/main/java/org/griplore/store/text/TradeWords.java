package org.griplore.store.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;

/**
 * Words of the trade that say the same, from {@code trade-words.txt}: each stem with the stems that
 * stand for it in the index.
 */
final class TradeWords {
  private static final String FILE = "trade-words.txt";

  private final Map<String, String[]> standIns = new HashMap<>();

  /** Reads the file; its words are brought to stems by the given analysis. */
  static TradeWords read(Analyzer stems) {
    TradeWords words = new TradeWords();
    try (InputStream in = TradeWords.class.getResourceAsStream(FILE)) {
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(String::strip)
          .filter(line -> !line.isEmpty() && !line.startsWith("#"))
          .forEach(line -> words.add(line, stems));
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void add(String line, Analyzer stems) {
    String[] sides = line.split("=", 2);
    String[] standIn = stems(sides[0], stems).toArray(String[]::new);
    for (String word : sides[1].split(",")) {
      List<String> stem = stems(word, stems);
      String[] other = stem.size() == 1 ? standIns.put(stem.get(0), standIn) : new String[0];
      if (other != null && !Arrays.equals(other, standIn)) {
        throw new IllegalStateException(FILE + ": not one word, or named twice: " + word.strip());
      }
    }
  }

  /** The stems that stand for a stem; null when it stands for itself. */
  String[] standIn(String stem) {
    return standIns.get(stem);
  }

  /** A text's stems in order. */
  static List<String> stems(String text, Analyzer analyzer) {
    List<String> stems = new ArrayList<>();
    try (TokenStream tokens = analyzer.tokenStream("", new StringReader(text))) {
      CharTermAttribute term = tokens.addAttribute(CharTermAttribute.class);
      tokens.reset();
      while (tokens.incrementToken()) {
        stems.add(term.toString());
      }
      tokens.end();
      return stems;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
