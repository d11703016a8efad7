package org.griplore.store.archive.views;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what {@code views.sql} says of the archive's views beside their definitions. */
public final class ViewSheet {
  private static final Pattern VIEW =
      Pattern.compile("-- (\\w+) \\| ([^|]+) \\| ([\\w,]+) \\| (.+)");

  private static final Pattern COLUMN =
      Pattern.compile(
          ".* AS \"?(\\w+)\"?,? -- (\\w+)(!)?(?: \\{([^}]+)})?(?: -> (\\w*)\\.(\\w+))?: (.+)");

  private final List<ArchiveTable> tables = new ArrayList<>();
  private Matcher view;
  private List<ArchiveTable.Field> fields;
  private List<ArchiveTable.Reference> references;

  private ViewSheet() {}

  /** The script that makes the views. */
  public static String script() {
    try (InputStream in = ViewSheet.class.getResourceAsStream("views.sql")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The views as tables, in the order they are defined: each after those it refers to. */
  public static List<ArchiveTable> tables() {
    ViewSheet sheet = new ViewSheet();
    script().lines().forEach(sheet::line);
    return List.copyOf(sheet.tables);
  }

  private void line(String line) {
    Matcher begins = VIEW.matcher(line);
    Matcher column = COLUMN.matcher(line);
    if (begins.matches()) {
      view = begins;
      fields = new ArrayList<>();
      references = new ArrayList<>();
    } else if (column.matches()) {
      column(column);
    } else if (line.endsWith(";") && view != null) {
      tables.add(
          new ArchiveTable(
              view.group(1),
              view.group(2),
              view.group(4),
              List.copyOf(fields),
              List.of(view.group(3).split(",")),
              List.copyOf(references)));
      view = null;
    }
  }

  private void column(Matcher column) {
    fields.add(
        new ArchiveTable.Field(
            column.group(1),
            ArchiveTable.Type.ofWord(column.group(2)),
            column.group(7),
            column.group(3) != null,
            column.group(4) == null ? List.of() : List.of(column.group(4).split("\\|"))));
    if (column.group(6) != null) {
      references.add(new ArchiveTable.Reference(column.group(1), column.group(5), column.group(6)));
    }
  }
}
