// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.TreeMap;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The steps from older forms to the present one. */
final class Migrations {
    /**
     * The steps that this program knows. Form 0 is that of the surveys taken before the first release; form 1 took it over
     * as it was.
     */
    static final Migrations STANDARD = new Migrations(List.of(new Unchanged(0)));

    private final TreeMap<Integer, Migration> byOrigin = new TreeMap<>();

    Migrations(List<Migration> steps) {
        for (Migration step : steps) {
            if (byOrigin.put(step.from(), step) != null) {
                throw new IllegalArgumentException("two migrations from form " + step.from());
            }
        }
    }

    /**
     * The text of a document in the present form.
     *
     * @param text a well-formed document without DTD
     * @throws InputException if there is no step for its form or a step fails
     */
    String migrate(String name, String text, int from) {
        if (!byOrigin.containsKey(from)) {
            throw Refusal.ofFile(
                    name, "version.tooOld", String.valueOf(from), String.valueOf(ModelFile.CURRENT_VERSION));
        }
        try {
            Document document = parse(text);
            for (int form = from; form < ModelFile.CURRENT_VERSION; form++) {
                step(document, form);
            }
            return write(document);
        } catch (ParserConfigurationException | SAXException | IOException | TransformerException e) {
            throw Refusal.ofFile(e, name, "version.failed", String.valueOf(from));
        }
    }

    private void step(Document document, int form) {
        Migration step = byOrigin.get(form);
        if (step == null) {
            throw new IllegalStateException("no migration from form " + form);
        }
        step.migrate(document);
        mark(document, form, form + 1);
    }

    private static void mark(Document document, int from, int to) {
        Element root = document.getDocumentElement();
        String namespace = DocumentForm.namespace(to, DocumentForm.packageOf(String.valueOf(root.getNamespaceURI())));
        String prefix = root.getPrefix();
        String declaration = prefix == null ? "xmlns" : "xmlns:" + prefix;
        document.renameNode(root, namespace, root.getNodeName());
        document.getDocumentElement().setAttributeNS(XMLConstants.XMLNS_ATTRIBUTE_NS_URI, declaration, namespace);
        if (root.getAttribute("version").equals(String.valueOf(from))) {
            document.getDocumentElement().setAttribute("version", String.valueOf(to));
        }
    }

    private static Document parse(String text) throws ParserConfigurationException, SAXException, IOException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        DocumentBuilder builder = factory.newDocumentBuilder();
        return builder.parse(new InputSource(new StringReader(text)));
    }

    private static String write(Document document) throws TransformerException {
        Transformer transformer = TransformerFactory.newDefaultInstance().newTransformer();
        transformer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
        StringWriter out = new StringWriter();
        transformer.transform(new DOMSource(document), new StreamResult(out));
        return out.toString();
    }
}
