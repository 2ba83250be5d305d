// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.XMLStreamWriter;

/** Writes XSL-FO (W3C recommendation, version 1.1). Attributes come in pairs of name and value. */
final class FoWriter {
    private static final String SPACE = "http://www.w3.org/1999/XSL/Format";
    private static final String MORE = "http://xmlgraphics.apache.org/fop/extensions";

    /** An attribute whose name begins so belongs to FOP's own name space. */
    private static final String MORE_PREFIX = "fox:";

    /** The space between a figure and its unit. */
    private static final Pattern UNIT =
            Pattern.compile("(?<=\\d) (?=(?:kW|kA|mA|A|V|mm²?|m|bar|L/min|°C|M?Ω|min|Std\\.|%)(?![\\p{L}²]))");

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 15);
    private final XMLStreamWriter out;
    private final FontSelector typefaces;

    /** Something that writes into an element. */
    interface Content {
        void write();
    }

    FoWriter(FontSelector typefaces) {
        this.typefaces = typefaces;
        try {
            out = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
            out.setPrefix("fo", SPACE);
            out.setPrefix("fox", MORE);
            out.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** The root, with name spaces and language. */
    void root(Locale locale, Content content, String... attributes) {
        try {
            out.writeStartElement("fo", "root", SPACE);
            out.writeNamespace("fo", SPACE);
            out.writeNamespace("fox", MORE);
            out.writeAttribute("xml", "http://www.w3.org/XML/1998/namespace", "lang", language(locale));
            attributes(attributes);
            content.write();
            out.writeEndElement();
            out.writeEndDocument();
            out.flush();
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** The language as a tag; the words without a language are English. */
    static String language(Locale locale) {
        return locale.getLanguage().isEmpty() ? Locale.ENGLISH.toLanguageTag() : locale.toLanguageTag();
    }

    /** An element. */
    void in(String name, Content content, String... attributes) {
        try {
            out.writeStartElement("fo", name, SPACE);
            attributes(attributes);
            content.write();
            out.writeEndElement();
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** An element without content. */
    void empty(String name, String... attributes) {
        in(name, () -> {}, attributes);
    }

    /** A block of text; each line of it begins a new line. */
    void block(String text, String... attributes) {
        String[] lines = text.split("\n", -1);
        in(
                "block",
                () -> {
                    for (int at = 0; at < lines.length; at++) {
                        if (at > 0) {
                            empty("block");
                        }
                        text(lines[at]);
                    }
                },
                attributes);
    }

    /** Text, each letter in a family that has it; a figure keeps its unit on its line. */
    void text(String text) {
        for (FontSelector.Run run : typefaces.set(UNIT.matcher(text).replaceAll("\u00a0"))) {
            if (run.family().equals(FontSelector.TEXT)) {
                characters(run.text());
            } else {
                in("inline", () -> characters(run.text()), "font-family", run.family());
            }
        }
    }

    private void characters(String text) {
        try {
            out.writeCharacters(text);
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /**
     * A drawing within the document. As a picture of its own FOP would ask it for its size by way of the typefaces of the machine, which
     * takes long and looks up the machine's name.
     *
     * @param svg an SVG document
     */
    void drawing(String svg) {
        try {
            XMLStreamReader in = XMLInputFactory.newDefaultFactory().createXMLStreamReader(new StringReader(svg));
            while (in.hasNext()) {
                switch (in.next()) {
                    case XMLStreamConstants.START_ELEMENT -> start(in);
                    case XMLStreamConstants.CHARACTERS -> out.writeCharacters(in.getText());
                    case XMLStreamConstants.END_ELEMENT -> out.writeEndElement();
                    default -> {}
                }
            }
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private void start(XMLStreamReader in) throws XMLStreamException {
        String space = in.getNamespaceURI();
        boolean outermost = !space.equals(out.getNamespaceContext().getNamespaceURI("svg"));
        if (outermost) {
            out.setPrefix("svg", space);
        }
        out.writeStartElement("svg", in.getLocalName(), space);
        if (outermost) {
            out.writeNamespace("svg", space);
        }
        for (int at = 0; at < in.getAttributeCount(); at++) {
            out.writeAttribute(in.getAttributeLocalName(at), in.getAttributeValue(at));
        }
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int at = 0; at < attributes.length; at += 2) {
            String name = attributes[at];
            if (name.startsWith(MORE_PREFIX)) {
                out.writeAttribute("fox", MORE, name.substring(MORE_PREFIX.length()), attributes[at + 1]);
            } else {
                out.writeAttribute(name, attributes[at + 1]);
            }
        }
    }

    byte[] bytes() {
        return bytes.toByteArray();
    }
}
