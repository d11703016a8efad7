package org.griplore.store.text;

import java.util.Set;
import org.griplore.store.vocabulary.SourceKind;

/**
 * Which notes are looked at. An empty set, or a year that is null, leaves nothing out; a note of
 * which the asked detail is not known is left out.
 *
 * @param models full names as the archive lists them
 * @param disciplines catalogue keys
 * @param tests keys of tests
 * @param sizes with or without load index and speed symbol: {@code 205/55 R16} also finds {@code
 *     205/55 R16 91V}
 * @param rims rim diameter codes, inch
 * @param widths nominal section widths, mm
 * @param sources who stands behind the report
 * @param fromYear first year of the test; null: from the beginning
 * @param toYear last year of the test, included; null: to the end
 */
public record NoteFilter(
    Set<String> models,
    Set<String> disciplines,
    Set<String> tests,
    Set<String> sizes,
    Set<Integer> rims,
    Set<Integer> widths,
    Set<SourceKind> sources,
    Integer fromYear,
    Integer toYear) {
  /** Leaves nothing out. */
  public static final NoteFilter NONE =
      new NoteFilter(
          Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), null, null);

  /** Keeps the sets from changing. */
  public NoteFilter {
    models = Set.copyOf(models);
    disciplines = Set.copyOf(disciplines);
    tests = Set.copyOf(tests);
    sizes = Set.copyOf(sizes);
    rims = Set.copyOf(rims);
    widths = Set.copyOf(widths);
    sources = Set.copyOf(sources);
  }
}
