package org.griplore.ingest;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.griplore.ingest.forms.LineageForm;
import org.griplore.ingest.forms.LongTableForm;
import org.griplore.ingest.forms.NotesForm;
import org.griplore.ingest.forms.OwnForm;
import org.griplore.ingest.forms.RunLogForm;
import org.griplore.ingest.forms.SourceContext;
import org.griplore.ingest.forms.TableForm;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.source.Document;
import org.griplore.ingest.grid.source.DocumentReader;
import org.griplore.ingest.grid.text.DelimitedText;
import org.griplore.ingest.grid.text.RecordReader;
import org.griplore.ingest.trace.BrakeTrace;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Reads one source: says first what form it has, then tells a receiver what it holds. */
final class SourceReader {
  private final Original original;
  private final DelimitedText longTable;
  private final Content content;
  private final OwnForm form;

  private SourceReader(Original original, DelimitedText longTable, Content content, OwnForm form) {
    this.original = original;
    this.longTable = longTable;
    this.content = content;
    this.form = form;
  }

  /**
   * Opens a source as far as to know its form. A long table is not read whole: it may be huge.
   *
   * @param catalogue the disciplines, a user's own included, that headers are known by
   * @throws Refusal when it cannot be read
   */
  static SourceReader of(Original original, DisciplineCatalogue catalogue) {
    Document document = Document.of(original);
    Optional<DelimitedText> delimited = document.delimited();
    if (delimited.isPresent() && isLongTable(delimited.get())) {
      return new SourceReader(original, delimited.get(), null, OwnForm.LONG_TABLE);
    }
    Content content = document.content();
    if (content instanceof Content.Prose prose) {
      OptionalInt delimiter = BrokenTable.delimiter(prose, catalogue);
      if (delimiter.isPresent()) {
        return cut(original, DocumentReader.cut(original, (char) delimiter.getAsInt()));
      }
    }
    return formed(original, BrakeTrace.runLog(content, original.name()).orElse(content));
  }

  /** A table that is told by its header only; it is refused where it holds no rows. */
  private static SourceReader cut(Original original, DelimitedText text) {
    try (RecordReader records = text.open()) {
      boolean header = records.next();
      boolean rows = header && records.next();
      while (rows && records.count() == 1 && records.field(0).isBlank()) {
        rows = records.next();
      }
      if (!rows) {
        throw new Refusal(
            original.name() + " holds the header of a table and no rows below it.",
            new Problem(original.name(), "a header only", "a row a tyre or a result"));
      }
    } catch (IOException e) {
      throw unreadable(original, e);
    }
    return isLongTable(text)
        ? new SourceReader(original, text, null, OwnForm.LONG_TABLE)
        : formed(original, DocumentReader.tables(text));
  }

  private static SourceReader formed(Original original, Content content) {
    OwnForm form = null;
    if (content instanceof Content.Tables tables
        && tables.grids().stream().filter(grid -> !grid.rows().isEmpty()).count() == 1) {
      form = OwnForm.of(header(tables.grids().get(0)));
      form = form == OwnForm.LONG_TABLE ? null : form;
    }
    return new SourceReader(original, null, content, form);
  }

  private static List<String> header(Grid grid) {
    return grid.rows().isEmpty()
        ? List.of()
        : grid.rows().get(0).stream().map(GridCell::text).toList();
  }

  private static boolean isLongTable(DelimitedText text) {
    try (RecordReader records = text.open()) {
      return records.next() && OwnForm.of(fields(records)) == OwnForm.LONG_TABLE;
    } catch (IOException e) {
      throw unreadable(text.original(), e);
    }
  }

  private static List<String> fields(RecordReader records) {
    List<String> fields = new ArrayList<>();
    for (int i = 0; i < records.count(); i++) {
      fields.add(records.field(i));
    }
    return fields;
  }

  /** What the source holds; null for a long table, which is not read whole. */
  Content content() {
    return content;
  }

  /** What the source is read as, in a word or two. */
  String form() {
    if (form != null) {
      return form.words();
    }
    if (content instanceof Content.Members members) {
      return members.form();
    }
    return content instanceof Content.Tables tables ? tables.form() : "notes";
  }

  /** Whether it is read row by row, as it may hold millions. */
  boolean mayBeHuge() {
    return longTable != null;
  }

  /** Whether it is tables whose columns have to be recognised. */
  boolean hasOpenColumns() {
    return form == null && content instanceof Content.Tables;
  }

  /** Every word that stands in a cell of its tables, folded as headers are. */
  Set<String> words() {
    Set<String> words = new HashSet<>();
    if (content instanceof Content.Tables tables) {
      tables.grids().stream()
          .flatMap(grid -> grid.rows().stream())
          .flatMap(List::stream)
          .forEach(cell -> words.addAll(RememberedColumns.words(cell.text())));
    }
    return words;
  }

  /** Lineage is read first and notes last, so that names are settled when they are needed. */
  int order() {
    if (form == OwnForm.LINEAGE) {
      return 0;
    }
    return content instanceof Content.Prose ? 2 : 1;
  }

  /**
   * Tells a receiver what the source holds.
   *
   * @throws Refusal when there is nothing in it that can be taken
   */
  void tell(SourceContext context) {
    if (!context.map().isEmpty() && (form != null || content instanceof Content.Prose)) {
      throw new Refusal(
          original.name() + " is read as " + form() + ", whose columns are known: give no map.",
          new Problem("map", form(), "a table of tyres and disciplines"));
    }
    if (content != null) {
      content.findings().forEach(context.receiver()::finding);
    }
    try {
      if (longTable != null) {
        try (RecordReader records = longTable.open()) {
          records.next();
          LongTableForm.read(records, context);
        }
      } else if (content instanceof Content.Prose prose) {
        if (!NotesForm.read(prose, context)) {
          throw nothing("notes or a table");
        }
      } else if (content instanceof Content.Tables tables) {
        tables(tables.grids(), context);
      }
    } catch (IOException e) {
      throw unreadable(original, e);
    }
  }

  private void tables(List<Grid> grids, SourceContext context) {
    if (form == OwnForm.LINEAGE) {
      LineageForm.read(grids.get(0), context);
    } else if (form == OwnForm.RUN_LOG) {
      RunLogForm.read(grids.get(0), context);
    } else if (!TableForm.read(grids, context)) {
      throw nothing("a header row that names the tyres and at least one discipline or place");
    }
  }

  private Refusal nothing(String expected) {
    return new Refusal(
        original.name() + " holds nothing that could be taken; expected " + expected + ".",
        new Problem(original.name(), "no results and no notes", expected));
  }

  private static Refusal unreadable(Original original, IOException cause) {
    return new Refusal(original.name() + " cannot be read: " + cause.getMessage() + ".", cause);
  }
}
