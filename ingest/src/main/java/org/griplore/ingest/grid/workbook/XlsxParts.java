package org.griplore.ingest.grid.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.griplore.ingest.grid.packed.PackedFile;
import org.griplore.ingest.grid.text.PlainXml;

/**
 * Which parts of a packed workbook are its sheets, and what belongs to them. Relations that lead
 * out of the file are left alone.
 */
final class XlsxParts {
  private static final String WORKBOOK = "xl/workbook.xml";

  private final PackedFile file;
  private final List<Sheet> sheets = new ArrayList<>();
  private boolean from1904;

  /** A sheet: its name, its part, and whether it is hidden. */
  record Sheet(String name, String part, boolean hidden) {}

  private record Relation(String id, String type, String target) {}

  private XlsxParts(PackedFile file) {
    this.file = file;
  }

  static XlsxParts of(PackedFile file) throws IOException, XMLStreamException {
    XlsxParts parts = new XlsxParts(file);
    Map<String, Relation> byId = new HashMap<>();
    parts.relations(WORKBOOK).forEach(relation -> byId.put(relation.id(), relation));
    try (InputStream in = file.open(WORKBOOK)) {
      XMLStreamReader xml = PlainXml.open(in);
      while (xml.hasNext()) {
        if (xml.next() == XMLStreamConstants.START_ELEMENT) {
          parts.element(xml, byId);
        }
      }
    }
    return parts;
  }

  private void element(XMLStreamReader xml, Map<String, Relation> byId) throws IOException {
    if (xml.getLocalName().equals("workbookPr")) {
      String date = PlainXml.attribute(xml, "date1904");
      from1904 |= date != null && PlainXml.isOn(date);
    } else if (xml.getLocalName().equals("sheet")) {
      Relation relation = byId.get(PlainXml.attribute(xml, "id"));
      if (relation != null && !relation.type().endsWith("/worksheet")) {
        return;
      }
      String name = PlainXml.attribute(xml, "name");
      String state = PlainXml.attribute(xml, "state");
      if (relation == null || name == null || !file.has(relation.target())) {
        throw new IOException("a sheet has no part");
      }
      sheets.add(new Sheet(name, relation.target(), state != null && !state.equals("visible")));
    }
  }

  /** The sheets of cells, in the workbook's order; sheets that are one chart are left out. */
  List<Sheet> sheets() {
    return sheets;
  }

  /** Whether days are counted from 1904. */
  boolean from1904() {
    return from1904;
  }

  /** The part of a kind that another part refers to; null where there is none. */
  String related(String part, String kind) throws IOException, XMLStreamException {
    for (Relation relation : relations(part)) {
      if (relation.type().endsWith("/" + kind) && file.has(relation.target())) {
        return relation.target();
      }
    }
    return null;
  }

  /** What the workbook as a whole refers to; by its usual place where it does not say. */
  String shared(String kind, String usual) throws IOException, XMLStreamException {
    String part = related(WORKBOOK, kind);
    return part == null && file.has(usual) ? usual : part;
  }

  private List<Relation> relations(String part) throws IOException, XMLStreamException {
    int slash = part.lastIndexOf('/') + 1;
    String relations = part.substring(0, slash) + "_rels/" + part.substring(slash) + ".rels";
    List<Relation> found = new ArrayList<>();
    if (!file.has(relations)) {
      return found;
    }
    try (InputStream in = file.open(relations)) {
      XMLStreamReader xml = PlainXml.open(in);
      while (xml.hasNext()) {
        if (xml.next() == XMLStreamConstants.START_ELEMENT
            && xml.getLocalName().equals("Relationship")
            && !"External".equals(PlainXml.attribute(xml, "TargetMode"))) {
          String id = PlainXml.attribute(xml, "Id");
          String type = PlainXml.attribute(xml, "Type");
          String target = PlainXml.attribute(xml, "Target");
          if (id != null && type != null && target != null) {
            found.add(new Relation(id, type, absolute(part.substring(0, slash), target)));
          }
        }
      }
    }
    return found;
  }

  private static String absolute(String folder, String target) {
    if (target.startsWith("/")) {
      return target.substring(1);
    }
    String base = folder;
    String rest = target;
    while (rest.startsWith("../") || rest.startsWith("./")) {
      if (rest.startsWith("../")) {
        int up = base.lastIndexOf('/', Math.max(0, base.length() - 2));
        base = up < 0 ? "" : base.substring(0, up + 1);
      }
      rest = rest.substring(rest.indexOf('/') + 1);
    }
    return base + rest;
  }
}
