// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.interchange;

import java.io.OutputStream;
import java.util.regex.Pattern;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.jspecify.annotations.Nullable;

/** Writes elements of a UBL document, each on a line of its own; what is absent or blank is left out. */
final class UblXml implements AutoCloseable {
    private static final String COMPONENTS = "urn:oasis:names:specification:ubl:schema:xsd:";

    /** What XML 1.0 cannot hold, from lists that were typed elsewhere. */
    private static final Pattern FOREIGN =
            Pattern.compile("[^\\x09\\x0A\\x0D\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]");

    private final XMLStreamWriter xml;
    private int depth;

    UblXml(OutputStream out) throws XMLStreamException {
        xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
    }

    /** Content of an element. */
    interface Content {
        void write() throws XMLStreamException;
    }

    /** The document with its root. */
    void document(String name, Content content) throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        line();
        xml.writeStartElement(name);
        xml.writeDefaultNamespace(COMPONENTS + name + "-2");
        xml.writeNamespace("cac", COMPONENTS + "CommonAggregateComponents-2");
        xml.writeNamespace("cbc", COMPONENTS + "CommonBasicComponents-2");
        depth = 1;
        content.write();
        depth = 0;
        line();
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    /** An aggregate component. */
    void part(String name, Content content) throws XMLStreamException {
        line();
        xml.writeStartElement("cac:" + name);
        depth++;
        content.write();
        depth--;
        line();
        xml.writeEndElement();
    }

    /** A basic component. */
    void value(String name, @Nullable Object value) throws XMLStreamException {
        value(name, value, "", "");
    }

    /** A basic component with an attribute, such as an amount's currency. */
    void value(String name, @Nullable Object value, String attribute, String of) throws XMLStreamException {
        String text = value == null
                ? ""
                : FOREIGN.matcher(value.toString()).replaceAll("").strip();
        if (text.isEmpty()) {
            return;
        }
        line();
        xml.writeStartElement("cbc:" + name);
        if (!attribute.isEmpty()) {
            xml.writeAttribute(attribute, of);
        }
        xml.writeCharacters(text);
        xml.writeEndElement();
    }

    private void line() throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(depth));
    }

    @Override
    public void close() throws XMLStreamException {
        xml.close();
    }
}
