package org.griplore.ingest.grid;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number format of a workbook, as far as it tells more than the figure: how many decimals are
 * shown, and the unit that stands behind or before it ({@code 0.0" m"}). Read from the first
 * section, which is for positive numbers (ECMA-376 part 1, 18.8.31).
 *
 * @param code the format as the workbook has it
 * @param decimals how many decimals are shown; null where the format leaves it open
 * @param unit the text beside the figure, {@code %} included; empty where there is none
 */
public record FormatCode(String code, Integer decimals, String unit) {
  private static final Pattern PART =
      Pattern.compile(
          "\"(?<quoted>[^\"]*)\"?|\\\\(?<escaped>.)|\\[\\$(?<money>[^\\]-]*)[^\\]]*\\]|\\[[^\\]]*\\]"
              + "|_.|\\*.|(?<digit>[0#?])|(?<point>\\.)|(?<end>;)|(?<literal>[^0#?.;])",
          Pattern.DOTALL);
  private static final Pattern CODE_LETTERS = Pattern.compile("[,@/EeGg+\\-()dmyhsDMYHS\\s]");
  private static final int LONGEST_UNIT = 30;

  /** What a format code says; null for none. */
  public static FormatCode of(String code) {
    if (code == null || code.isBlank() || code.equalsIgnoreCase("General")) {
      return null;
    }
    Matcher part = PART.matcher(code);
    StringBuilder before = new StringBuilder();
    StringBuilder behind = new StringBuilder();
    boolean digits = false;
    boolean point = false;
    int decimals = 0;
    while (part.find() && part.group("end") == null) {
      if (part.group("digit") != null) {
        digits = true;
        decimals += point ? 1 : 0;
      } else if (part.group("point") != null) {
        point = digits;
      } else {
        (digits ? behind : before).append(text(part));
      }
    }
    String unit = behind.toString().isBlank() ? before.toString() : behind.toString();
    unit = VisibleText.of(unit);
    return new FormatCode(
        code, digits ? decimals : null, digits && unit.length() <= LONGEST_UNIT ? unit : "");
  }

  private static String text(Matcher part) {
    for (String group : new String[] {"quoted", "escaped", "money"}) {
      if (part.group(group) != null) {
        return part.group(group);
      }
    }
    String literal = part.group("literal");
    return literal == null || CODE_LETTERS.matcher(literal).matches() ? "" : literal;
  }
}
