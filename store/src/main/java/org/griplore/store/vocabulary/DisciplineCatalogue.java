package org.griplore.store.vocabulary;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The disciplines known, in the order in which tables show them: wet, dry, snow and ice, noise,
 * rolling resistance and wear, ratings, mass and price, total. Immutable.
 */
public final class DisciplineCatalogue {
  /**
   * A discipline recognised in a header or title.
   *
   * @param discipline the discipline
   * @param words the header's words it was recognised by
   * @param language the language of the phrase: en, de, fr or sv
   * @param letters letters of the phrase: the longer, the surer
   */
  public record Match(Discipline discipline, String words, String language, int letters) {}

  private record Phrase(Discipline discipline, String language, HeaderPhrase phrase) {}

  private record Found(Phrase phrase, HeaderPhrase.Hit hit) {
    Match match() {
      return new Match(
          phrase.discipline(), String.join(" ", hit.words()), phrase.language(), hit.letters());
    }
  }

  private static final Comparator<Found> SUREST =
      Comparator.comparing(Found::hit, HeaderPhrase.Hit.SUREST);

  private final Map<String, Discipline> byKey;
  private List<Phrase> phrases;

  private DisciplineCatalogue(Map<String, Discipline> byKey) {
    this.byKey = Collections.unmodifiableMap(byKey);
  }

  /** The disciplines that come with the program. */
  public static DisciplineCatalogue standard() {
    try (InputStream data = DisciplineCatalogue.class.getResourceAsStream("disciplines.json")) {
      return new DisciplineCatalogue(
          new DisciplineReader("disciplines.json", false).read(data, new LinkedHashMap<>()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * This catalogue with the disciplines of a file of the same form added. For a key known already
   * the fields given replace those here, and the others stay.
   *
   * @throws Refusal naming file, key and field when the file cannot be read or understood
   */
  public DisciplineCatalogue with(Path userFile) {
    return new DisciplineCatalogue(
        new DisciplineReader(userFile.toString()).read(userFile, new LinkedHashMap<>(byKey)));
  }

  /**
   * The discipline of a key.
   *
   * @throws Refusal when there is none, naming the keys there are
   */
  public Discipline get(String key) {
    return find(key)
        .orElseThrow(
            () -> {
              String known = "one of " + String.join(", ", byKey.keySet());
              return new Refusal(
                  "There is no discipline \"" + key + "\"; expected " + known,
                  new Problem("discipline", key, known));
            });
  }

  /** The discipline of a key, if there is one. */
  public Optional<Discipline> find(String key) {
    return Optional.ofNullable(byKey.get(key));
  }

  /** All disciplines in the order in which tables show them. */
  public List<Discipline> all() {
    return List.copyOf(byKey.values());
  }

  /**
   * The discipline that a header or title names. The longest phrase wins; words that several
   * disciplines share ({@code Aquaplaning}) are told apart by the unit in the header, and give
   * nothing where it does not decide.
   */
  public Optional<Match> byHeader(String headerText) {
    List<Match> matches = candidates(headerText);
    return matches.size() == 1 ? Optional.of(matches.get(0)) : Optional.empty();
  }

  /** All disciplines that the surest words of a header may mean; more than one is for a person. */
  public List<Match> candidates(String headerText) {
    List<String> words = HeaderKey.words(headerText);
    List<Found> found = new ArrayList<>();
    for (Phrase phrase : phrases()) {
      phrase.phrase().in(words).ifPresent(hit -> found.add(new Found(phrase, hit)));
    }
    if (found.isEmpty()) {
      return List.of();
    }
    found.sort(SUREST);
    Found best = found.get(0);
    Map<String, Match> equal = new LinkedHashMap<>();
    for (Found other : found) {
      if (SUREST.compare(best, other) == 0) {
        equal.putIfAbsent(other.phrase().discipline().key(), other.match());
      }
    }
    return equal.size() < 2 ? List.copyOf(equal.values()) : decidedByUnit(headerText, equal);
  }

  private static List<Match> decidedByUnit(String header, Map<String, Match> equal) {
    Optional<Dimension> named =
        UnitWords.inHeader(header).map(recognised -> recognised.unit().dimension());
    List<Match> fitting =
        equal.values().stream()
            .filter(match -> named.filter(match.discipline().dimension()::equals).isPresent())
            .toList();
    return fitting.size() == 1 ? fitting : List.copyOf(equal.values());
  }

  /** Made when first asked for: questions never ask. */
  private synchronized List<Phrase> phrases() {
    if (phrases == null) {
      List<Phrase> all = new ArrayList<>();
      for (Discipline discipline : byKey.values()) {
        phrasesOf(discipline)
            .forEach(
                (notation, language) ->
                    all.add(new Phrase(discipline, language, HeaderPhrase.of(notation))));
      }
      phrases = List.copyOf(all);
    }
    return phrases;
  }

  private static Map<String, String> phrasesOf(Discipline discipline) {
    Map<String, String> languages = new LinkedHashMap<>();
    languages.put(discipline.key(), "en");
    String name = HeaderKey.of(discipline.name());
    if (!name.isEmpty()) {
      languages.put(name, "en");
    }
    Set<String> order = new LinkedHashSet<>(List.of("en", "de", "fr", "sv"));
    order.addAll(discipline.headerWords().keySet());
    for (String language : order) {
      for (String notation : discipline.headerWords().getOrDefault(language, List.of())) {
        languages.putIfAbsent(notation, language);
      }
    }
    return languages;
  }
}
