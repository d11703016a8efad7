package org.griplore.ingest.grid.workbook;

import java.util.HashMap;
import java.util.Map;

/** Styles of a workbook by name, of which one may build on another. */
final class CellStyles {
  private static final int DEEPEST = 20;

  private final Map<String, Style> byName = new HashMap<>();

  /**
   * A style; null where it says nothing and the one it builds on counts.
   *
   * @param parent the style it builds on
   * @param format a number format's code
   * @param hides whether it hides what has it (a sheet)
   */
  record Style(String parent, String format, Boolean struck, Boolean raised, Boolean hides) {}

  void put(String name, Style style) {
    if (name != null) {
      byName.put(name, style);
    }
  }

  /** The look of a style; plain where there is none. */
  XlsxStyles.Look look(String name) {
    String format = null;
    Boolean struck = null;
    Boolean raised = null;
    Style style = byName.get(name);
    for (int i = 0; style != null && i < DEEPEST; i++) {
      format = format == null ? style.format() : format;
      struck = struck == null ? style.struck() : struck;
      raised = raised == null ? style.raised() : raised;
      style = style.parent() == null ? null : byName.get(style.parent());
    }
    return new XlsxStyles.Look(format, Boolean.TRUE.equals(struck), Boolean.TRUE.equals(raised));
  }

  boolean hides(String name) {
    Style style = byName.get(name);
    return style != null && Boolean.TRUE.equals(style.hides());
  }
}
