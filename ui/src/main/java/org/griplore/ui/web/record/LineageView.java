package org.griplore.ui.web.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.ModelsQuestion.ModelRow;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.page.AnswerView;
import org.griplore.ui.web.page.Pages;

/**
 * The lines with their generations, the oldest first.
 *
 * @param lines by name; models of no known line stand under an empty name
 * @param current the model whose page it is; null on others
 */
public record LineageView(List<Line> lines, String current) {
  /** A line and its generations. */
  public record Line(String name, String address, List<Generation> generations) {}

  /**
   * One model in its line.
   *
   * @param label what sets it apart in its line
   * @param model the full name
   * @param years when it was launched and tested, in words
   * @param follows the model it follows; null where that stands just before it, or none is known
   * @param linked whether it follows the one just before it
   */
  public record Generation(
      String label, String model, String address, String years, String follows, boolean linked) {}

  /** The page of the models with their lines. */
  public record ModelsView(AnswerView<ModelRow> view, LineageView lineage) {}

  public static String page(AnswerView<ModelRow> view, Pages pages) {
    return pages.render("models.jte", new ModelsView(view, of(view.answer(), null)));
  }

  /** The lines of the models; {@code current} is the one whose page it is, or null. */
  public static LineageView of(Answer<ModelRow> answer, String current) {
    Map<String, List<ModelRow>> byLine = new LinkedHashMap<>();
    Map<String, ModelRow> byName = new HashMap<>();
    for (ModelRow model : answer.rows()) {
      byName.put(model.model(), model);
      byLine
          .computeIfAbsent(Optional.ofNullable(model.line()).orElse(""), l -> new ArrayList<>())
          .add(model);
    }
    List<Line> lines = new ArrayList<>();
    byLine.forEach(
        (name, models) -> {
          models.sort(
              Comparator.comparingInt((ModelRow model) -> depth(model, byName))
                  .thenComparing(
                      ModelRow::launched, Comparator.nullsLast(Comparator.naturalOrder()))
                  .thenComparing(ModelRow::model));
          lines.add(new Line(name, name.isEmpty() ? null : Addresses.line(name), strip(models)));
        });
    return new LineageView(lines, current);
  }

  /** How many models went before; a ring of them, which no lineage should have, ends the count. */
  private static int depth(ModelRow model, Map<String, ModelRow> byName) {
    int depth = 0;
    ModelRow at = model;
    while (at != null && at.follows() != null && depth <= byName.size()) {
      at = byName.get(at.follows());
      depth++;
    }
    return depth;
  }

  private static List<Generation> strip(List<ModelRow> models) {
    List<Generation> strip = new ArrayList<>();
    String before = null;
    for (ModelRow model : models) {
      boolean linked = model.follows() != null && model.follows().equals(before);
      strip.add(
          new Generation(
              label(model),
              model.model(),
              Addresses.model(model.model()),
              years(model),
              linked ? null : model.follows(),
              linked));
      before = model.model();
    }
    return strip;
  }

  /** What sets the model apart in its line. */
  private static String label(ModelRow model) {
    String name = model.model();
    if (model.line() != null && name.startsWith(model.line() + " ")) {
      return name.substring(model.line().length() + 1);
    }
    return model.line() == null || model.generation() == null ? name : model.generation();
  }

  private static String years(ModelRow model) {
    String launched = model.launched() == null ? "" : "from " + model.launched();
    String tested =
        model.tests() == 0
            ? "not tested"
            : model.tests() + (model.tests() == 1 ? " test" : " tests");
    return launched.isEmpty() ? tested : launched + ", " + tested;
  }
}
