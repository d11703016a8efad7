package org.griplore.ui.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.ui.web.link.Addresses;

/**
 * A page that says why there is no answer.
 *
 * @param offers what may have been meant, each leading to the question asked with it
 */
public record RefusalView(Refusal refusal, List<Offer> offers) {
  /** What may have been meant. */
  public record Offer(String name, String address) {}

  /** A refusal that offers nothing. */
  public static RefusalView of(Refusal refusal) {
    return new RefusalView(refusal, List.of());
  }

  /** A refusal to answer a question, with the names it mentions as links. */
  public static RefusalView of(
      Refusal refusal, String kind, Map<String, List<String>> given, Offers known) {
    List<Offer> offers = new ArrayList<>();
    for (Problem problem : refusal.problems()) {
      for (String name : problem.expected().split(" \\| ")) {
        if (given.containsKey(problem.where()) && known.isKnown(name)) {
          List<String> values =
              given.get(problem.where()).stream()
                  .map(value -> value.strip().equals(problem.found()) ? name : value)
                  .toList();
          offers.add(
              new Offer(
                  name,
                  Addresses.with(kind, given, problem.where(), values.toArray(String[]::new))));
        }
      }
    }
    return new RefusalView(refusal, offers);
  }

  /** The problems that are not told by the offers already. */
  public List<Problem> problems() {
    return offers.isEmpty() ? refusal.problems() : List.of();
  }
}
