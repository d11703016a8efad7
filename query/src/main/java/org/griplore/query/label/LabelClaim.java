package org.griplore.query.label;

import java.util.List;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;

/**
 * What the tyre label would say of a figure, or why it can say nothing.
 *
 * @param model the model's name
 * @param discipline catalogue key
 * @param what what is classed, with its symbol
 * @param figure in {@code unit}, rounded as the label rounds; null where it cannot be formed
 * @param unit symbol; empty for an index
 * @param letter class by Regulation (EU) 2020/740; null where a condition is not met
 * @param letterBefore class by Regulation (EC) 1222/2009: one letter may mean another figure there
 * @param method the method's edition and how sure its figures are
 * @param said what the class holds for; without a class why there is none
 */
public record LabelClaim(
    String model,
    String discipline,
    String what,
    Double figure,
    String unit,
    String letter,
    String letterBefore,
    String method,
    String said) {
  /** As shown in tables. */
  public static final List<Column<LabelClaim>> COLUMNS =
      List.of(
          Column.of("model", "Model", Format.MODEL, LabelClaim::model),
          Column.of("what", "What", Format.TEXT, LabelClaim::what)
              .means("What is classed, with its symbol."),
          Column.of("figure", "Figure", Format.TEXT, LabelClaim::figure)
              .inUnitOf("unit")
              .means("The figure as the label rounds it."),
          Column.of("unit", "Unit", Format.UNIT, LabelClaim::unit)
              .means("Unit of the figure; empty for an index."),
          Column.of("letter", "Class, (EU) 2020/740", Format.TEXT, LabelClaim::letter)
              .means("Class by Regulation (EU) 2020/740."),
          Column.of("letterBefore", "Class, (EC) 1222/2009", Format.TEXT, LabelClaim::letterBefore)
              .means("Class by Regulation (EC) 1222/2009, where a letter may mean another figure."),
          Column.<LabelClaim>of("method", "Method", Format.TEXT, LabelClaim::method)
              .means("The method's edition, and how sure its figures are.")
              .asDetail());

  static LabelClaim none(
      String model, String discipline, String what, String method, String whyNot) {
    return new LabelClaim(model, discipline, what, null, null, null, null, method, whyNot);
  }

  /** Whether there is a class. */
  public boolean hasClass() {
    return letter != null;
  }

  /** The claim in a sentence. */
  public String sentence() {
    if (letter == null) {
      return "No label class for the " + what + ": " + said + ".";
    }
    return "Label: %s %s%s, class %s by Regulation (EU) 2020/740, %s by (EC) 1222/2009. %s. %s."
        .formatted(
            what,
            figure,
            unit.isEmpty() ? "" : " " + unit,
            letter,
            letterBefore,
            method,
            Character.toUpperCase(said.charAt(0)) + said.substring(1));
  }
}
