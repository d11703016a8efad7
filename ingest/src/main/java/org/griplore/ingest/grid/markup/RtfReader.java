package org.griplore.ingest.grid.markup;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.MarkedText;
import org.griplore.ingest.grid.text.TextDecoding;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Reads the tables of a rich-text document (RTF 1.9.1), the paragraphs between them as their
 * preamble. Objects, pictures, fields' instructions and other destinations are left out.
 */
public final class RtfReader {
  private static final long MOST_BYTES = 64L << 20;
  private static final int DEEPEST = 500;

  private static final Set<String> LEFT_OUT =
      Set.of(
          "fonttbl",
          "colortbl",
          "stylesheet",
          "info",
          "pict",
          "object",
          "header",
          "headerl",
          "headerr",
          "headerf",
          "footer",
          "footerl",
          "footerr",
          "footerf",
          "fldinst",
          "filetbl",
          "listtable",
          "listoverridetable",
          "revtbl",
          "rsidtbl",
          "generator",
          "xmlnstbl",
          "themedata",
          "colorschememapping",
          "datastore",
          "latentstyles",
          "annotation",
          "atnid",
          "atnauthor",
          "bkmkstart",
          "bkmkend",
          "nonesttables",
          "template",
          "passwordhash");

  /** Windows code pages by the character sets of fonts. */
  private static final Map<Integer, String> CHARSETS =
      Map.ofEntries(
          Map.entry(0, "windows-1252"),
          Map.entry(77, "x-MacRoman"),
          Map.entry(128, "windows-31j"),
          Map.entry(161, "windows-1253"),
          Map.entry(162, "windows-1254"),
          Map.entry(186, "windows-1257"),
          Map.entry(204, "windows-1251"),
          Map.entry(238, "windows-1250"));

  private final String name;
  private final byte[] bytes;
  private final DocumentTables tables;
  private final Deque<State> outer = new ArrayDeque<>();
  private final Map<Integer, Charset> fonts = new HashMap<>();
  private Charset page = TextDecoding.WINDOWS_1252;
  private State state = new State();
  private int position;
  private MarkedText text = new MarkedText();
  private DocumentTables.Table table;
  private boolean inRow;
  private int definition;
  private final Map<Integer, Boolean> merged = new HashMap<>();
  private int skipped;
  private int fontDefined = -1;
  private int mergeStart;

  /** What holds within a group. */
  private static final class State {
    boolean leftOut;
    boolean fontTable;
    boolean raised;
    boolean struck;
    boolean hidden;
    int afterUnicode = 1;
    Charset charset;

    State copy() {
      State copy = new State();
      copy.leftOut = leftOut;
      copy.fontTable = fontTable;
      copy.raised = raised;
      copy.struck = struck;
      copy.hidden = hidden;
      copy.afterUnicode = afterUnicode;
      copy.charset = charset;
      return copy;
    }
  }

  private RtfReader(String name, byte[] bytes) {
    this.name = name;
    this.bytes = bytes;
    this.tables = new DocumentTables(name);
  }

  /**
   * Reads a source as a rich-text document.
   *
   * @throws Refusal when it breaks off, is nested deeper than 500 groups, or is too long
   */
  public static Content read(Original original) throws IOException {
    if (original.bytes() > MOST_BYTES) {
      throw new Refusal(
          "%s is a rich-text document of more than %d MB: save its table as CSV."
              .formatted(original.name(), MOST_BYTES >> 20),
          new Problem(original.name(), original.bytes() + " bytes", "a smaller document"));
    }
    RtfReader reader = new RtfReader(original.name(), original.readAll());
    reader.read();
    return reader.tables.content("text document");
  }

  private void read() {
    boolean ended = false;
    while (position < bytes.length && !ended) {
      int c = bytes[position++] & 0xff;
      switch (c) {
        case '{' -> {
          if (outer.size() >= DEEPEST) {
            throw damaged("groups nested deeper than " + DEEPEST);
          }
          outer.push(state.copy());
        }
        case '}' -> {
          if (outer.isEmpty()) {
            throw damaged("a group that ends and never began");
          }
          state = outer.pop();
          ended = outer.isEmpty();
        }
        case '\\' -> control();
        case '\r', '\n' -> {}
        default -> letter();
      }
    }
    if (!ended) {
      throw damaged("an end before the last group ends");
    }
    endTable();
    if (!text.text().isEmpty()) {
      tables.paragraph(text, false);
    }
  }

  private Refusal damaged(String what) {
    return new Refusal(
        name + " is a damaged or incomplete rich-text document (" + what + "): save it anew.",
        new Problem(name, what, "a whole rich-text document"));
  }

  /** A byte of text, and those that follow, in the code page that holds. */
  private void letter() {
    if (skipped > 0) {
      skipped--;
      return;
    }
    int start = position - 1;
    while (skipped == 0
        && position < bytes.length
        && "{}\\\r\n".indexOf(bytes[position] & 0xff) < 0) {
      position++;
    }
    put(new String(bytes, start, position - start, charset()));
  }

  private Charset charset() {
    return state.charset == null ? page : state.charset;
  }

  private void put(String part) {
    if (!state.leftOut && !state.hidden) {
      text.add(part, state.raised, state.struck);
    }
  }

  private void control() {
    if (position >= bytes.length) {
      throw damaged("an end in the midst of a word");
    }
    char c = (char) (bytes[position] & 0xff);
    if (!Character.isLetter(c) || c > 127) {
      position++;
      symbol(c);
      return;
    }
    int start = position;
    while (position < bytes.length && isLetter(bytes[position])) {
      position++;
    }
    String word = new String(bytes, start, position - start, StandardCharsets.US_ASCII);
    int numberStart = position;
    if (position < bytes.length && bytes[position] == '-') {
      position++;
    }
    while (position < bytes.length && bytes[position] >= '0' && bytes[position] <= '9') {
      position++;
    }
    Integer number = number(numberStart);
    if (position < bytes.length && bytes[position] == ' ') {
      position++;
    }
    word(word, number);
  }

  private static boolean isLetter(byte b) {
    return b >= 'a' && b <= 'z' || b >= 'A' && b <= 'Z';
  }

  private Integer number(int start) {
    int length = position - start;
    String digits = new String(bytes, start, Math.min(length, 10), StandardCharsets.US_ASCII);
    return digits.matches("-?\\d{1,9}") ? Integer.valueOf(digits) : null;
  }

  private void symbol(char c) {
    switch (c) {
      case '\'' -> {
        int code = 0;
        if (position + 2 <= bytes.length) {
          code =
              16 * Math.max(0, Character.digit((char) bytes[position], 16))
                  + Math.max(0, Character.digit((char) bytes[position + 1], 16));
        }
        position = Math.min(bytes.length, position + 2);
        if (skipped > 0) {
          skipped--;
        } else {
          put(escaped((byte) code));
        }
      }
      case '~' -> put("\u00a0");
      case '_' -> put("-");
      case '*' -> state.leftOut = true;
      case '\\', '{', '}' -> put(String.valueOf(c));
      case '\r', '\n' -> word("par", null);
      default -> {}
    }
  }

  /** A letter of a double-byte code page stands in two escapes. */
  private String escaped(byte code) {
    Charset charset = charset();
    boolean leads =
        charset.newEncoder().maxBytesPerChar() >= 2
            && ((code & 0xff) >= 0x81 && (code & 0xff) <= 0x9f || (code & 0xff) >= 0xe0);
    if (leads
        && position + 4 <= bytes.length
        && bytes[position] == '\\'
        && bytes[position + 1] == '\'') {
      int second =
          16 * Math.max(0, Character.digit((char) bytes[position + 2], 16))
              + Math.max(0, Character.digit((char) bytes[position + 3], 16));
      position += 4;
      return new String(new byte[] {code, (byte) second}, charset);
    }
    return new String(new byte[] {code}, charset);
  }

  private void word(String word, Integer number) {
    boolean on = number == null || number != 0;
    switch (word) {
      case "bin" ->
          position = (int) Math.min(bytes.length, position + (long) Math.max(0, or(number, 0)));
      case "u" -> {
        if (number != null && skipped == 0) {
          put(String.valueOf((char) (number < 0 ? number + 65_536 : number)));
        }
        skipped = state.afterUnicode;
        skipReplacement();
      }
      case "uc" -> state.afterUnicode = Math.max(0, Math.min(100, or(number, 1)));
      case "ansicpg" -> page = charset("windows-" + or(number, 1252), page);
      case "mac" -> page = charset("x-MacRoman", page);
      case "f" -> {
        fontDefined = or(number, 0);
        state.charset = state.fontTable ? state.charset : fonts.get(fontDefined);
      }
      case "fcharset" -> {
        String known = CHARSETS.get(or(number, 0));
        if (state.fontTable && known != null && or(number, 0) != 0) {
          fonts.put(fontDefined, charset(known, page));
        }
      }
      case "super" -> state.raised = on;
      case "nosupersub", "sub" -> state.raised = false;
      case "strike", "striked", "deleted" -> state.struck = on;
      case "v" -> state.hidden = on;
      case "plain" -> {
        state.raised = false;
        state.struck = false;
        state.hidden = false;
      }
      case "par", "line", "sect", "page" -> paragraph(word);
      case "tab" -> put("\t");
      case "endash" -> put("\u2013");
      case "emdash" -> put("\u2014");
      case "lquote", "rquote" -> put("'");
      case "ldblquote", "rdblquote" -> put("\"");
      case "bullet" -> put("\u2022");
      case "nestcell", "nestrow" -> put(" ");
      default -> tableWord(word);
    }
  }

  private void tableWord(String word) {
    switch (word) {
      case "trowd" -> {
        inRow = true;
        definition = 0;
        merged.clear();
        if (table == null) {
          flush();
          table = new DocumentTables.Table();
          table.row = 1;
        }
      }
      case "clmrg" -> merged.put(definition, true);
      case "cellx" -> definition++;
      case "cell" -> cell();
      case "row" -> {
        if (table != null) {
          table.row++;
          table.column = 1;
          inRow = false;
        }
      }
      case "pard" -> inRow = false;
      case "intbl" -> inRow = table != null;
      case "fonttbl" -> {
        state.leftOut = true;
        state.fontTable = true;
      }
      default -> state.leftOut |= LEFT_OUT.contains(word);
    }
  }

  /** What follows a letter given by its number is there for readers that do not know it. */
  private void skipReplacement() {
    while (skipped > 0
        && position < bytes.length
        && "{}\\\r\n".indexOf(bytes[position] & 0xff) < 0) {
      position++;
      skipped--;
    }
    boolean escape =
        position + 1 < bytes.length && bytes[position] == '\\' && bytes[position + 1] == '\'';
    skipped = escape ? skipped : 0;
  }

  private static int or(Integer number, int other) {
    return number == null ? other : number;
  }

  private static Charset charset(String known, Charset other) {
    return Charset.isSupported(known) ? Charset.forName(known) : other;
  }

  private void paragraph(String word) {
    if (state.leftOut) {
      return;
    }
    if (table != null && inRow) {
      put("\n");
    } else if (word.equals("line")) {
      put("\n");
    } else {
      endTable();
      tables.paragraph(text, false);
      text = new MarkedText();
    }
  }

  private void flush() {
    if (!text.text().isEmpty()) {
      tables.paragraph(text, false);
    }
    text = new MarkedText();
  }

  private void cell() {
    if (state.leftOut) {
      return;
    }
    if (table == null) {
      table = new DocumentTables.Table();
      table.row = 1;
    }
    if (merged.containsKey(table.column - 1) && table.column > 1) {
      table.merges.removeIf(m -> m.firstRow() == table.row && m.lastColumn() == table.column - 1);
      table.merges.add(new Grid.Merge(table.row, mergeStart, table.row, table.column));
    } else {
      mergeStart = table.column;
    }
    GridCell cell = text.cell(table.row, table.column);
    tables.cell(table, cell);
    table.column++;
    text = new MarkedText();
  }

  private void endTable() {
    if (table != null) {
      tables.table(table);
      table = null;
      inRow = false;
    }
  }
}
