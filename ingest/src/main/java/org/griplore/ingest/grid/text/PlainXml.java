package org.griplore.ingest.grid.text;

import java.io.InputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * XML read event by event, without document types and without entities from elsewhere: nothing
 * grows and nothing outside of the source is opened.
 */
public final class PlainXml {
  private static final XMLInputFactory XML = factory();

  private PlainXml() {}

  private static XMLInputFactory factory() {
    XMLInputFactory xml = XMLInputFactory.newFactory();
    xml.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    xml.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    xml.setProperty(XMLInputFactory.IS_COALESCING, true);
    return xml;
  }

  /** Opens an XML text in the encoding it names. */
  public static XMLStreamReader open(InputStream in) throws XMLStreamException {
    return XML.createXMLStreamReader(in);
  }

  /** An attribute by its local name, whatever its name space; null where there is none. */
  public static String attribute(XMLStreamReader xml, String name) {
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      if (xml.getAttributeLocalName(i).equals(name)) {
        return xml.getAttributeValue(i);
      }
    }
    return null;
  }

  /** Whether a yes-or-no attribute or element says yes; one without a value does. */
  public static boolean isOn(String value) {
    return value == null || !(value.equals("0") || value.equals("false") || value.equals("off"));
  }

  /** A whole number in an attribute; the other where there is none or no number. */
  public static int number(XMLStreamReader xml, String attribute, int other) {
    String text = attribute(xml, attribute);
    return text != null && text.strip().matches("\\d{1,9}")
        ? Integer.parseInt(text.strip())
        : other;
  }
}
