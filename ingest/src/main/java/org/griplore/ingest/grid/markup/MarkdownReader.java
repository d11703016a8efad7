package org.griplore.ingest.grid.markup;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.commonmark.node.Block;
import org.commonmark.node.Heading;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;

/**
 * Reads the tables of a Markdown text: lines parted by vertical bars of which the second is dashes.
 * Rows are the text's lines, columns are counted within the table. What stands between the tables
 * is the preamble of the next, as on a page: a heading, a paragraph or a list item is one cell,
 * {@code key: value} lines are a cell each.
 */
public final class MarkdownReader {
  private static final Pattern DASHES = Pattern.compile(":?-+:?");
  private static final Pattern FENCE = Pattern.compile("\\s*(?:`{3,}|~{3,})[^`]*");
  private static final Pattern DETAIL = Pattern.compile("[^:|]{2,40}:\\s.*");
  private static final Parser PARSER =
      Parser.builder().includeSourceSpans(IncludeSourceSpans.BLOCKS).build();
  private static final TextContentRenderer TEXT = TextContentRenderer.builder().build();

  private final List<String> lines;
  private final List<Grid> grids = new ArrayList<>();
  private List<GridCell> preamble = new ArrayList<>();
  private String heading = "";

  private MarkdownReader(List<String> lines) {
    this.lines = lines;
  }

  /** Whether a text has a line of dashes below a line with bars. */
  public static boolean hasTable(List<String> lines) {
    for (int i = 1; i < lines.size(); i++) {
      if (isTableStart(lines.get(i - 1), lines.get(i))) {
        return true;
      }
    }
    return false;
  }

  /** The tables; none where what looks like one stands in a code block. */
  public static List<Grid> read(List<String> lines) {
    MarkdownReader reader = new MarkdownReader(lines);
    try {
      Node document = PARSER.parse(String.join("\n", lines));
      for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
        reader.block(node);
      }
    } catch (StackOverflowError e) {
      // quotes in quotes without end, which the library descends into: no table is in them
      return List.of();
    }
    if (!reader.preamble.isEmpty() && !reader.grids.isEmpty()) {
      reader.grids.add(new Grid("after the tables", reader.preamble, List.of(), List.of(), false));
    }
    long tables = reader.grids.stream().filter(grid -> !grid.rows().isEmpty()).count();
    return tables > 1 ? reader.grids : reader.grids.stream().map(MarkdownReader::unnamed).toList();
  }

  private static Grid unnamed(Grid grid) {
    return grid.rows().isEmpty()
        ? grid
        : new Grid("", grid.preamble(), grid.rows(), grid.merges(), grid.unbroken());
  }

  private void block(Node node) {
    if (node instanceof Heading) {
      heading = text(node);
      tell(first(node), heading);
    } else if (node instanceof Paragraph) {
      paragraph(node);
    } else if (node instanceof ListBlock) {
      for (Node item = node.getFirstChild(); item != null; item = item.getNext()) {
        tell(first(item), text(item).replace('\n', ' '));
      }
    } else if (node instanceof Block && !node.getSourceSpans().isEmpty()) {
      node.getSourceSpans().stream()
          .map(span -> span.getLineIndex())
          .filter(line -> !FENCE.matcher(lines.get(line)).matches())
          .forEach(line -> tell(line + 1, lines.get(line)));
    }
  }

  private void paragraph(Node node) {
    int from = first(node) - 1;
    int end = from + node.getSourceSpans().size();
    for (int i = from; i + 1 < end; i++) {
      if (isTableStart(lines.get(i), lines.get(i + 1))) {
        prose(from, i);
        table(i, end);
        return;
      }
    }
    prose(from, end);
  }

  private void prose(int from, int end) {
    List<String> texts = new ArrayList<>();
    for (int i = from; i < end; i++) {
      texts.add(inline(lines.get(i).strip()));
    }
    if (texts.stream().allMatch(text -> DETAIL.matcher(text).matches())) {
      for (int i = 0; i < texts.size(); i++) {
        tell(from + 1 + i, texts.get(i));
      }
    } else {
      tell(from + 1, String.join(" ", texts));
    }
  }

  private void table(int header, int end) {
    List<List<GridCell>> rows = new ArrayList<>();
    for (int i = header; i < end; i++) {
      List<GridCell> row = new ArrayList<>();
      List<String> cells = cells(lines.get(i));
      for (int c = 0; c < cells.size() && i != header + 1; c++) {
        String text = inline(cells.get(c));
        if (!text.isEmpty()) {
          row.add(GridCell.of(i + 1, c + 1, text));
        }
      }
      if (!row.isEmpty()) {
        rows.add(row);
      }
    }
    grids.add(new Grid(heading, preamble, rows, List.of(), true));
    preamble = new ArrayList<>();
  }

  private void tell(int line, String text) {
    if (!text.isBlank()) {
      preamble.add(GridCell.of(line, 1, text.strip()));
    }
  }

  private static boolean isTableStart(String header, String dashes) {
    return header.contains("|")
        && dashes.contains("-")
        && cells(dashes).stream().allMatch(cell -> DASHES.matcher(cell).matches())
        && cells(header).size() == cells(dashes).size();
  }

  /** The cells between unescaped bars; those at both ends are frames. */
  private static List<String> cells(String line) {
    String bare = line.strip();
    bare = bare.startsWith("|") ? bare.substring(1) : bare;
    bare =
        bare.endsWith("|") && !bare.endsWith("\\|") ? bare.substring(0, bare.length() - 1) : bare;
    List<String> cells = new ArrayList<>();
    for (String cell : bare.split("(?<!\\\\)\\|", -1)) {
      cells.add(cell.strip().replace("\\|", "|"));
    }
    return cells;
  }

  private static int first(Node node) {
    return node.getSourceSpans().get(0).getLineIndex() + 1;
  }

  private static String text(Node node) {
    return TEXT.render(node).strip();
  }

  /** A text without its marks of emphasis and links; others may look like marks and are left. */
  private static String inline(String text) {
    boolean marked = text.matches("(?s).*[*_`\\[\\\\].*") && !text.matches("[-*+#>\\d\\[].*");
    boolean strong = text.startsWith("**") || text.startsWith("*") && text.endsWith("*");
    return marked || strong && text.length() > 2 ? text(PARSER.parse(text)) : text;
  }
}
