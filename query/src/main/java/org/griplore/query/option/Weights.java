package org.griplore.query.option;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Weights of disciplines as they are given: {@code wet-braking=3,rolling-resistance=1.5}. */
public final class Weights {
  private static final Pattern ONE =
      Pattern.compile("([\\p{L}0-9 _-]+?)\\s*[=:]\\s*(\\d{1,9}(\\.\\d{1,9})?)");

  private Weights() {}

  /**
   * Reads an option that holds weights.
   *
   * @param known keys of the disciplines that can be weighted
   * @return weight by discipline, in the order given; those of weight zero too. Empty when the
   *     option was not given
   * @throws org.griplore.store.vocabulary.Refusal when one is not understood, a discipline is
   *     unknown or given twice, or all weights are zero
   */
  public static Map<String, Double> of(Choices choices, String option, List<String> known) {
    Map<String, Double> weights = new LinkedHashMap<>();
    for (String value : choices.all(option)) {
      for (String part : value.split("[,;]")) {
        if (!part.isBlank()) {
          add(weights, option, part.strip(), known);
        }
      }
    }
    if (choices.has(option) && weights.values().stream().allMatch(weight -> weight == 0)) {
      throw Choices.refusal(
          option, String.join(",", choices.all(option)), "at least one weight above zero");
    }
    return weights;
  }

  private static void add(
      Map<String, Double> weights, String option, String part, List<String> known) {
    Matcher one = ONE.matcher(part);
    if (!one.matches()) {
      throw Choices.refusal(option, part, "a discipline and its weight, like wet-braking=3");
    }
    String key = Choices.key(one.group(1));
    if (!known.contains(key)) {
      throw Choices.refusal(option, one.group(1), "one of " + String.join(", ", known));
    }
    if (weights.put(key, Double.parseDouble(one.group(2))) != null) {
      throw Choices.refusal(option, part, "one weight for each discipline");
    }
  }
}
