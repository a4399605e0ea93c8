package org.firnline.logs.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Walks through XML that comes from anywhere: elements, attributes, text and nothing else. A type
 * definition, the place where entities that grow or reach outside are declared, is refused.
 */
final class PlainXml implements AutoCloseable {
  private static final int LONGEST_TEXT = 1 << 20;
  private static final int DEEPEST = 200;

  private final InputStream in;
  private final XMLStreamReader reader;
  private int depth;

  /** Opens XML; the stream is closed with it. */
  PlainXml(InputStream in) throws IOException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, false);
    this.in = in;
    try {
      this.reader = factory.createXMLStreamReader(in);
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  private static IOException broken(XMLStreamException e) {
    return new IOException("the workbook's XML is broken: " + firstLine(e), e);
  }

  private static String firstLine(XMLStreamException e) {
    String message = e.getMessage() == null ? e.toString() : e.getMessage();
    return message.lines().skip(message.startsWith("ParseError") ? 1 : 0).findFirst().orElse("");
  }

  /** Moves to the next start or end of an element, or to text; false at the end. */
  boolean advance() throws IOException {
    try {
      while (reader.hasNext()) {
        int event = reader.next();
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
          throw new IOException("the workbook's XML declares entities; no spreadsheet needs them");
        }
        depth += event == XMLStreamConstants.START_ELEMENT ? 1 : 0;
        depth -= event == XMLStreamConstants.END_ELEMENT ? 1 : 0;
        if (depth > DEEPEST) {
          throw new IOException("the workbook's XML is nested more than " + DEEPEST + " deep");
        }
        if (isOfUse(event)) {
          return true;
        }
      }
      return false;
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  private static boolean isOfUse(int event) {
    return event == XMLStreamConstants.START_ELEMENT
        || event == XMLStreamConstants.END_ELEMENT
        || event == XMLStreamConstants.CHARACTERS
        || event == XMLStreamConstants.CDATA
        || event == XMLStreamConstants.SPACE;
  }

  /** Whether an element of this local name starts here. */
  boolean starts(String name) {
    return reader.isStartElement() && reader.getLocalName().equals(name);
  }

  /** Whether an element of this local name ends here. */
  boolean ends(String name) {
    return reader.isEndElement() && reader.getLocalName().equals(name);
  }

  /** An attribute of the element that starts here, by local name. */
  Optional<String> attribute(String name) {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      if (reader.getAttributeLocalName(i).equals(name)) {
        return Optional.ofNullable(reader.getAttributeValue(i));
      }
    }
    return Optional.empty();
  }

  /** A whole number in an attribute; {@code otherwise} if it is absent or none. */
  int number(String name, int otherwise) {
    String text = attribute(name).orElse("");
    boolean whole = text.matches("\\d{1,9}");
    return whole ? Integer.parseInt(text) : otherwise;
  }

  /** Appends the text here, if here is text. */
  void appendText(StringBuilder to) throws IOException {
    if (reader.isCharacters() && to.length() <= LONGEST_TEXT) {
      to.append(reader.getTextCharacters(), reader.getTextStart(), reader.getTextLength());
    }
  }

  @Override
  public void close() throws IOException {
    try {
      reader.close();
    } catch (XMLStreamException e) {
      throw broken(e);
    } finally {
      in.close();
    }
  }
}
