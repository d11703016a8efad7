package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.ColumnRole;

/** What the rows below a header are. */
final class BodyRows {
  private final CellBlock block;
  private final HeaderBand band;
  private final List<ColumnRole> roles;
  private final NameColumns names;
  private final KnownHeads heads;

  BodyRows(CellBlock block, HeaderBand band, List<ColumnRole> roles, KnownHeads heads) {
    this.block = block;
    this.band = band;
    this.roles = roles;
    this.heads = heads;
    this.names = new NameColumns(block, heads, band.body(), column -> false);
  }

  /** The kind of each row from the first below the header. */
  List<RowKind> kinds() {
    List<RowKind> kinds = new ArrayList<>();
    for (int r = band.body(); r < block.rows(); r++) {
      kinds.add(kind(r));
    }
    return kinds;
  }

  private RowKind kind(int row) {
    GridCell name = name(row);
    int figures = 0;
    int others = 0;
    for (int c = 0; c < block.columns(); c++) {
      boolean named = NameColumns.isName(roles.get(c));
      figures += !named && block.sort(row, c).isFigure() ? 1 : 0;
      others += !named && block.at(row, c) != null ? 1 : 0;
    }
    if (name == null) {
      return firstText(row) != null && figures > 0
          ? RowKind.named(firstText(row))
              .filter(k -> k != RowKind.REFERENCE)
              .orElse(RowKind.NAMELESS)
          : RowKind.NAMELESS;
    }
    RowKind said = RowKind.named(bare(name.text())).orElse(null);
    if (isHeader(row)) {
      return RowKind.HEADER;
    }
    if (said != null && said != RowKind.UNIT) {
      return said;
    }
    if (isUnits(row) || said == RowKind.UNIT) {
      return RowKind.UNIT;
    }
    if (others == 0 || isOneText(row)) {
      return NameColumns.isSentence(name.text()) ? RowKind.NOTE : RowKind.SUBHEAD;
    }
    if (figures == 0 && NameColumns.isSentence(name.text())) {
      return RowKind.NOTE;
    }
    return names.isNoTyre(name.text()) && !isPartOfName() ? RowKind.NO_TYRE : RowKind.TYRE;
  }

  private static String bare(String name) {
    return name.replaceAll("\\s*([*\u2020\u2021]+|\\[\\d\\])$", "").strip();
  }

  private String firstText(int row) {
    for (int c = 0; c < block.columns(); c++) {
      if (block.sort(row, c) == CellSort.TEXT) {
        return block.text(row, c);
      }
    }
    return null;
  }

  /** The cell that names the row: the model's before the maker's. */
  GridCell name(int row) {
    GridCell found = null;
    for (int c = 0; c < block.columns(); c++) {
      ColumnRole role = roles.get(c);
      GridCell cell = block.at(row, c);
      boolean main =
          role instanceof ColumnRole.Tyre
              || role instanceof ColumnRole.Model
              || role instanceof ColumnRole.Line
              || role instanceof ColumnRole.Generation;
      if (cell != null && main) {
        return cell;
      }
      found = cell != null && role instanceof ColumnRole.Maker ? cell : found;
    }
    return found;
  }

  /** A generation like "5" names a tyre together with the columns beside it. */
  private boolean isPartOfName() {
    int parts = 0;
    for (ColumnRole role : roles) {
      parts += NameColumns.isName(role) ? 1 : 0;
    }
    return parts > 1;
  }

  private boolean isOneText(int row) {
    String text = null;
    for (int c = 0; c < block.columns(); c++) {
      if (block.at(row, c) != null) {
        if (text != null && !text.equals(block.text(row, c))) {
          return false;
        }
        text = block.text(row, c);
      }
    }
    return true;
  }

  private boolean isUnits(int row) {
    int units = 0;
    int filled = 0;
    for (int c = 0; c < block.columns(); c++) {
      if (block.at(row, c) != null && !NameColumns.isName(roles.get(c))) {
        filled++;
        units += block.sort(row, c) == CellSort.TEXT && heads.isUnit(block.text(row, c)) ? 1 : 0;
      }
    }
    return units > 0 && 2 * units > filled && block.count(row, CellSort.NUMBER) == 0;
  }

  /** The same words as in the header. */
  private boolean isHeader(int row) {
    int same = 0;
    int filled = 0;
    for (int c = 0; c < block.columns(); c++) {
      if (block.at(row, c) != null) {
        filled++;
        for (int head : band.rows()) {
          if (block.text(row, c).equals(block.text(head, c))) {
            same++;
            break;
          }
        }
      }
    }
    return filled > 1 && same == filled;
  }

  NameColumns names() {
    return names;
  }
}
