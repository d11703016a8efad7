package org.griplore.ui.web.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.griplore.query.evidence.Names;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.vocabulary.SeasonClass;

/** Names that a form offers while one types. */
public final class Offers {
  /** More would make every page heavy; then one types, and is corrected by the refusal. */
  private static final int MOST = 600;

  private static final String MODELS = "known-models";
  private static final String LINES = "known-lines";
  private static final String SIDES = "known-sides";
  private static final String TESTS = "known-tests";

  private final QueryContext queryContext;

  public Offers(QueryContext queryContext) {
    this.queryContext = queryContext;
  }

  /**
   * Names for the fields that refer to it.
   *
   * @param id the element's id
   */
  public record NameList(String id, List<String> names) {}

  static String listFor(Option option) {
    return switch (option.value()) {
      case "MODEL" -> MODELS;
      case "LINE" -> LINES;
      case "SIDE" -> SIDES;
      case "KEY" -> TESTS;
      default -> null;
    };
  }

  public NameList models() {
    return list(MODELS).orElseThrow();
  }

  Optional<NameList> list(String id) {
    if (id == null) {
      return Optional.empty();
    }
    List<String> offered =
        switch (id) {
          case MODELS -> modelNames().toList();
          case LINES -> lineNames().toList();
          case SIDES ->
              Stream.of(
                      Arrays.stream(SeasonClass.values()).map(SeasonClass::key),
                      lineNames(),
                      modelNames())
                  .flatMap(names -> names)
                  .distinct()
                  .toList();
          case TESTS -> queryContext.evidence().tests().stream().map(TestRecord::key).toList();
          default -> List.of();
        };
    return Optional.of(
        new NameList(id, offered.size() > MOST ? List.of() : offered.stream().sorted().toList()));
  }

  private Stream<String> modelNames() {
    return queryContext.evidence().models().stream().map(ModelRecord::name);
  }

  private Stream<String> lineNames() {
    return queryContext.evidence().models().stream()
        .map(Names::lineName)
        .filter(line -> line != null)
        .distinct();
  }

  /** Whether a text is the name of a model or the key of a test. */
  boolean isKnown(String text) {
    return queryContext.evidence().models().stream().anyMatch(model -> model.name().equals(text))
        || queryContext.evidence().tests().stream().anyMatch(test -> test.key().equals(text));
  }

  public List<Form.Choice> disciplines() {
    return queryContext.catalogue().all().stream()
        .map(discipline -> new Form.Choice(discipline.key(), discipline.name()))
        .toList();
  }
}
