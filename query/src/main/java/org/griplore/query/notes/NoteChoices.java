package org.griplore.query.notes;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.store.text.NoteFilter;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;

/** The words and filters that questions about notes share. */
final class NoteChoices {
  static final List<Option> OPTIONS =
      List.of(
          Option.arguments(
              "text",
              "TEXT",
              "words, \"words side by side\", aqua* for beginnings, -word to leave out",
              true),
          Option.repeated("model", "MODEL", "only notes on this model"),
          Option.repeated("discipline", "DISCIPLINE", "only notes on this discipline"),
          Option.once("size", "SIZE", "only notes from tests in this size", null),
          Option.repeated("test", "KEY", "only notes from this test"),
          Option.once("from", "YEAR", "only tests from this year on", null),
          Option.once("to", "YEAR", "only tests up to this year", null),
          Option.repeated("source", "KIND", "only reports of this kind")
              .oneOf(List.of("own", "independent", "maker")));

  private NoteChoices() {}

  static String text(Choices choices) {
    return String.join(" ", choices.all("text"));
  }

  static NoteFilter filter(QueryContext context, Choices choices) {
    Set<String> models =
        choices.all("model").stream()
            .map(name -> context.names().model("model", name))
            .map(position -> context.evidence().models().get(position).name())
            .collect(Collectors.toSet());
    Set<String> sizes =
        choices.all("size").stream()
            .map(
                size ->
                    TyreSize.find(size)
                        .orElseThrow(() -> Choices.refusal("size", size, "a size like 205/55 R16"))
                        .toString())
            .collect(Collectors.toSet());
    TestDate from = choices.date("from");
    TestDate to = choices.date("to");
    return new NoteFilter(
        models,
        Set.copyOf(choices.all("discipline")),
        Set.copyOf(choices.all("test")),
        sizes,
        Set.of(),
        Set.of(),
        choices.all("source").stream()
            .map(word -> SourceKind.ofKey(word).orElseThrow())
            .collect(Collectors.toSet()),
        from == null ? null : from.year(),
        to == null ? null : to.year());
  }
}
