package org.griplore.ingest.grid.workbook;

import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.griplore.ingest.grid.text.PlainXml;

/** What people noted on cells of a sheet (ECMA-376 part 1, 18.7). */
final class XlsxComments {
  /** Newer programs put a sentence on themselves before the comment of a conversation. */
  private static final String THREAD = "[Threaded comment]";

  private static final String BEHIND_IT = "Comment:";
  private static final Pattern BLANKS = Pattern.compile("\\s+");

  private XlsxComments() {}

  /** The comments by place; the first of two at one place. */
  static Map<CellReference, String> read(String name, String part, InputStream in)
      throws XMLStreamException {
    Map<CellReference, String> comments = new LinkedHashMap<>();
    XMLStreamReader xml = PlainXml.open(in);
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("comment")) {
        String reference = PlainXml.attribute(xml, "ref");
        String text = oneLine(XlsxTexts.text(xml, "comment").text());
        if (reference != null && !text.isEmpty()) {
          comments.putIfAbsent(CellReference.of(reference, name, part), text);
        }
      }
    }
    return comments;
  }

  static String oneLine(String text) {
    int behind = text.startsWith(THREAD) ? text.indexOf(BEHIND_IT) : -1;
    String said = behind < 0 ? text : text.substring(behind + BEHIND_IT.length());
    return BLANKS.matcher(said).replaceAll(" ").strip();
  }
}
