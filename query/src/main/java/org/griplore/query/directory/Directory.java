package org.griplore.query.directory;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.store.names.Spelling;
import org.griplore.store.vocabulary.NameKey;

/**
 * Finds what has a name by the words of that name, as far as they are typed and however they are
 * spelt. Every word typed must fit one of the entry's words. Immutable and safe for many threads.
 */
public final class Directory {
  /** More words than this are no name. */
  private static final int MOST_WORDS = 8;

  private final List<DirectoryEntry> entries;
  private final String[] words;
  private final int[][] entriesOfWord;
  private final int[] wordCount;
  private final String[] keys;

  /** An entry found, with how well it fits, from 0 to 1. */
  public record Found(DirectoryEntry entry, double fit) {}

  /** Learns the entries; of equal fits the earlier comes first. */
  public Directory(List<DirectoryEntry> entries) {
    this.entries = List.copyOf(entries);
    this.wordCount = new int[entries.size()];
    this.keys = new String[entries.size()];
    Map<String, List<Integer>> postings = new LinkedHashMap<>();
    for (int i = 0; i < entries.size(); i++) {
      DirectoryEntry entry = entries.get(i);
      keys[i] = NameKey.of(entry.name());
      wordCount[i] = NameKey.words(entry.name()).size();
      Set<String> its = new LinkedHashSet<>(NameKey.words(entry.name()));
      entry.names().forEach(name -> its.addAll(NameKey.words(name)));
      for (String word : its) {
        postings.computeIfAbsent(word, w -> new ArrayList<>()).add(i);
      }
    }
    this.words = postings.keySet().toArray(String[]::new);
    this.entriesOfWord =
        postings.values().stream()
            .map(list -> list.stream().mapToInt(i -> i).toArray())
            .toArray(int[][]::new);
  }

  /** The entries that fit best, the best first, at most so many of each kind. */
  public List<Found> find(String text, int mostOfKind) {
    List<String> typed = NameKey.words(text).stream().limit(MOST_WORDS).toList();
    if (typed.isEmpty()) {
      return List.of();
    }
    float[] sum = new float[entries.size()];
    int[] fitting = new int[entries.size()];
    for (int k = 0; k < typed.size(); k++) {
      float[] best = best(typed.get(k));
      for (int i = 0; i < sum.length; i++) {
        if (best[i] > 0 && fitting[i] == k) {
          sum[i] += best[i];
          fitting[i] = k + 1;
        }
      }
    }
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < sum.length; i++) {
      if (fitting[i] == typed.size()) {
        all.add(i);
      }
    }
    String key = NameKey.of(text);
    double[] fit = new double[entries.size()];
    all.forEach(i -> fit[i] = fit(i, sum[i] / typed.size(), typed.size(), key));
    all.sort(
        Comparator.comparingDouble((Integer i) -> -fit[i])
            .thenComparing(i -> entries.get(i).kind())
            .thenComparing(i -> i));
    return picked(all, fit, mostOfKind);
  }

  /** How well one word typed fits each entry: as its best word does. */
  private float[] best(String typed) {
    float[] best = new float[entries.size()];
    for (int w = 0; w < words.length; w++) {
      float fit = (float) Spelling.fit(typed, words[w]);
      if (fit > 0) {
        for (int i : entriesOfWord[w]) {
          best[i] = Math.max(best[i], fit);
        }
      }
    }
    return best;
  }

  /** The words' fit, less for a name with many other words; a name that begins so comes first. */
  private double fit(int entry, double ofWords, int typed, String key) {
    double whole = Math.min(1.0, (double) typed / Math.max(1, wordCount[entry]));
    double begins = keys[entry].startsWith(key) ? 0.1 : 0;
    return 0.75 * ofWords + 0.15 * whole + begins;
  }

  private List<Found> picked(List<Integer> sorted, double[] fit, int mostOfKind) {
    int[] of = new int[DirectoryEntry.Kind.values().length];
    List<Found> picked = new ArrayList<>();
    for (int i : sorted) {
      if (of[entries.get(i).kind().ordinal()]++ < mostOfKind) {
        picked.add(new Found(entries.get(i), fit[i]));
      }
    }
    return picked;
  }
}
