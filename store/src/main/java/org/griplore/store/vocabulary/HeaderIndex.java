package org.griplore.store.vocabulary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the discipline whose words stand in a header: whole words, the longest phrase first. */
final class HeaderIndex {
  private record Phrase(String key, String words, String language, Discipline discipline) {}

  private final List<Phrase> longestFirst = new ArrayList<>();

  HeaderIndex(Collection<Discipline> disciplines) {
    for (Discipline discipline : disciplines) {
      add(discipline, "key", discipline.key());
      add(discipline, "en", discipline.name());
      discipline
          .headerWords()
          .forEach((language, words) -> words.forEach(phrase -> add(discipline, language, phrase)));
    }
    longestFirst.sort(Comparator.comparingInt((Phrase phrase) -> phrase.key().length()).reversed());
  }

  private void add(Discipline discipline, String language, String words) {
    longestFirst.add(new Phrase(HeaderKey.of(words), words, language, discipline));
  }

  Optional<DisciplineCatalogue.Match> find(String header) {
    String key = " " + HeaderKey.of(header) + " ";
    return longestFirst.stream()
        .filter(phrase -> key.contains(" " + phrase.key() + " "))
        .findFirst()
        .map(
            phrase ->
                new DisciplineCatalogue.Match(
                    phrase.discipline(), phrase.words(), phrase.language()));
  }
}
