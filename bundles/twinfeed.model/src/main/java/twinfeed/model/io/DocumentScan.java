// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;

/**
 * One walk through a document before the model sees it. What could reach outside the document (DTD, entities, references,
 * processing instructions) ends the walk at once; what the model does not know is collected with its line.
 */
final class DocumentScan {
    private static final int MOST_PROBLEMS = 50;
    private static final Set<String> REACHING_OUT = Set.of("href", "schemaLocation", "noNamespaceSchemaLocation");
    private static final String INCLUDE = "http://www.w3.org/2001/XInclude";

    private final Document document;
    private final boolean withValues;
    private final TagLines lines;
    private final XMLStreamReader reader;
    private final Deque<Frame> open = new ArrayDeque<>();
    private final Set<String> ids = new HashSet<>();
    private final List<InputProblem> problems = new ArrayList<>();
    private int version = ModelFile.CURRENT_VERSION;
    private int elements;

    DocumentScan(Document document, boolean withValues) {
        this.document = document;
        this.withValues = withValues;
        this.lines = new TagLines(document.text());
        this.reader = open(document);
    }

    private static XMLStreamReader open(Document document) {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        try {
            return factory.createXMLStreamReader(new StringReader(document.text()));
        } catch (XMLStreamException e) {
            throw malformed(document, e);
        }
    }

    /** Walks to the end; gives the document's version. */
    int run() {
        try {
            checkDeclaration();
            while (reader.hasNext() && problems.size() < MOST_PROBLEMS) {
                handle(reader.next());
            }
            return version;
        } catch (XMLStreamException e) {
            throw malformed(document, e);
        }
    }

    List<InputProblem> allProblems() {
        run();
        return problems;
    }

    List<InputProblem> problems() {
        return problems;
    }

    private void handle(int event) {
        switch (event) {
            case XMLStreamConstants.START_ELEMENT -> start();
            case XMLStreamConstants.END_ELEMENT -> end();
            case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text();
            case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE -> throw refuseDeclaration();
            case XMLStreamConstants.PROCESSING_INSTRUCTION -> throw refuse("outside.instruction");
            default -> {
                // comments and white space say nothing to the model
            }
        }
    }

    private void checkDeclaration() {
        String encoding = reader.getCharacterEncodingScheme();
        if (encoding != null && !encoding.equalsIgnoreCase("UTF-8") && !encoding.equalsIgnoreCase("US-ASCII")) {
            throw refuse("file.declaredEncoding", encoding);
        }
        if ("1.1".equals(reader.getVersion())) {
            throw refuse("file.xmlVersion");
        }
    }

    private void start() {
        refuseReferences();
        DocumentBounds bounds = document.bounds();
        if (++elements > bounds.elements()) {
            throw refuse("element.most", String.valueOf(bounds.elements()));
        }
        if (open.size() >= DocumentBounds.DEPTH) {
            throw refuse("element.deep", String.valueOf(DocumentBounds.DEPTH));
        }
        Frame parent = open.peek();
        if (parent == null) {
            open.push(root());
        } else if (parent.isSkipped()) {
            open.push(Frame.skipped(parent.path));
        } else {
            open.push(child(parent));
        }
        Frame frame = open.element();
        if (frame.type != null) {
            checkAttributes(frame, frame.type);
        } else if (frame.value != null && reader.getAttributeCount() > 0) {
            problem(frame.path, attributeName(0), "", "attribute.none", frame.value.getName());
        }
    }

    private void refuseReferences() {
        if (INCLUDE.equals(reader.getNamespaceURI())) {
            throw refuse("outside.reference", reader.getLocalName());
        }
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            if (REACHING_OUT.contains(reader.getAttributeLocalName(i))) {
                throw refuse("outside.reference", reader.getAttributeLocalName(i));
            }
        }
    }

    private Frame root() {
        String namespace = String.valueOf(reader.getNamespaceURI());
        EClass root = document.root();
        int written = DocumentForm.versionOf(namespace);
        boolean ours = written != DocumentForm.FOREIGN
                && DocumentForm.packageOf(namespace).equals(root.getEPackage().getName())
                && reader.getLocalName().equals(root.getName());
        if (!ours) {
            throw refuse("root.unknown", reader.getLocalName(), root.getName(), DocumentForm.startTag(root));
        }
        checkVersion(root, written);
        return written < ModelFile.CURRENT_VERSION ? Frame.skipped("") : Frame.ofObject("", root);
    }

    private void checkVersion(EClass root, int written) {
        String current = String.valueOf(ModelFile.CURRENT_VERSION);
        if (written > ModelFile.CURRENT_VERSION) {
            throw refuse("version.newer", String.valueOf(written), current);
        }
        EAttribute mark = ModelFile.versionMark(root);
        String stated = mark == null ? null : reader.getAttributeValue(null, mark.getName());
        if (mark != null && !String.valueOf(written).equals(stated)) {
            throw stated == null
                    ? refuse("version.none", String.valueOf(written))
                    : refuse("version.conflict", stated, String.valueOf(written));
        }
        version = written;
    }

    private Frame child(Frame parent) {
        String name = reader.getLocalName();
        if (parent.type == null) {
            problem(parent.path, "", "", "element.inValue", name);
            return Frame.skipped(parent.path);
        }
        EStructuralFeature feature = isPlain(reader.getNamespaceURI()) ? parent.type.getEStructuralFeature(name) : null;
        if (feature == null || !(feature instanceof EReference || feature.isMany())) {
            unknownElement(parent, parent.type, name, feature);
            return Frame.skipped(parent.child(name));
        }
        int count = parent.count(feature);
        if (count > 1 && !feature.isMany()) {
            problem(parent.child(name), "", "", "element.twice", name);
        }
        int most = document.bounds().each();
        if (count > most) {
            throw refuse("element.tooMany", String.valueOf(most), name);
        }
        String path = feature.isMany() ? parent.child(name) + "[" + label(count) + "]" : parent.child(name);
        return feature instanceof EReference reference
                ? Frame.ofObject(path, reference.getEReferenceType())
                : Frame.ofValue(path, (EAttribute) feature);
    }

    /** An element of a list is called by its name or id, else by its number. */
    private String label(int number) {
        String name = reader.getAttributeValue(null, "name");
        String label = name == null ? reader.getAttributeValue(null, "id") : name;
        return label == null ? String.valueOf(number) : label;
    }

    private void unknownElement(Frame parent, EClass type, String name, @Nullable EStructuralFeature feature) {
        if (feature != null) {
            problem(parent.child(name), "", "", "element.isAttribute", name);
        } else {
            unknown(parent.child(name), "", "element", name, KnownNames.elements(type));
        }
    }

    private void checkAttributes(Frame frame, EClass type) {
        for (int i = 0; i < reader.getAttributeCount() && problems.size() < MOST_PROBLEMS; i++) {
            String name = attributeName(i);
            EStructuralFeature feature = type.getEStructuralFeature(name);
            if (feature instanceof EAttribute attribute && !attribute.isMany()) {
                checkValue(frame, attribute, reader.getAttributeValue(i));
            } else if (feature != null) {
                problem(frame.child(name), name, reader.getAttributeValue(i), "attribute.isElement", name);
            } else {
                unknown(frame, name, type);
            }
        }
    }

    private void checkValue(Frame frame, EAttribute attribute, String value) {
        String name = attribute.getName();
        if (attribute.isID() && !ids.add(frameClass(frame) + " " + value)) {
            problem(frame.child(name), name, value, "value.duplicate");
        }
        boolean decimal = attribute.getEType().getInstanceClass() == BigDecimal.class;
        if (withValues || decimal || InvalidValue.isLong(attribute.getEAttributeType(), value)) {
            InvalidValue fault = InvalidValue.of(attribute.getEAttributeType(), value);
            if (fault != null) {
                problem(frame.child(name), name, value, fault);
            }
        }
    }

    private static String frameClass(Frame frame) {
        return frame.type == null ? "" : frame.type.getName();
    }

    private void unknown(Frame frame, String attribute, EClass type) {
        unknown(
                frame.path.isEmpty() ? type.getName() : frame.path,
                attribute,
                "attribute",
                attribute,
                KnownNames.attributes(type));
    }

    private void unknown(String path, String attribute, String what, String name, List<String> known) {
        String nearest = NearestName.of(name, known);
        String key = what + (nearest.isEmpty() ? ".unknown" : ".unknown.near");
        problem(path, attribute, "", key, name, nearest, String.join(", ", known));
    }

    private void text() {
        Frame frame = open.peek();
        if (frame == null || frame.isSkipped() || reader.isWhiteSpace() && frame.value == null) {
            return;
        }
        if (frame.value == null) {
            problem(frame.path, "", reader.getText().strip(), "text.stray");
        } else {
            frame.text.append(reader.getText());
        }
    }

    private void end() {
        Frame frame = open.pop();
        if (frame.value != null
                && (withValues || InvalidValue.isLong(frame.value.getEAttributeType(), frame.text.toString()))) {
            InvalidValue fault = InvalidValue.of(frame.value.getEAttributeType(), frame.text.toString());
            if (fault != null) {
                problem(frame.path, "", frame.text.toString(), fault);
            }
        }
    }

    private String attributeName(int index) {
        String prefix = reader.getAttributePrefix(index);
        String local = reader.getAttributeLocalName(index);
        return isPlain(prefix) ? local : prefix + ":" + local;
    }

    private static boolean isPlain(@Nullable String namespaceOrPrefix) {
        return namespaceOrPrefix == null || namespaceOrPrefix.isEmpty();
    }

    private void problem(String path, String attribute, String reading, String key, String... arguments) {
        problem(
                path,
                attribute,
                reading,
                new InvalidValue(Refusal.wrong(key, arguments), Refusal.right(key, arguments)));
    }

    private void problem(String path, String attribute, String reading, InvalidValue fault) {
        problems.add(new InputProblem(document.name(), line(attribute), path, reading, fault.wrong(), fault.right()));
    }

    private int line(String attribute) {
        Location end = reader.getLocation();
        if (!document.asTyped()) {
            return 0;
        }
        return attribute.isEmpty()
                ? lines.ofTag(end.getLineNumber(), end.getColumnNumber())
                : lines.ofAttribute(end.getLineNumber(), end.getColumnNumber(), attribute);
    }

    /** The parser does not tell where a declaration stands that it leaves out. */
    private InputException refuseDeclaration() {
        int line = document.asTyped() ? lines.ofText("<!DOCTYPE") : 0;
        return Refusal.atLine(document.name(), line, "outside.dtd");
    }

    private InputException refuse(String key, String... arguments) {
        return Refusal.atLine(document.name(), line(""), key, arguments);
    }

    private static InputException malformed(Document document, XMLStreamException e) {
        Location at = e.getLocation();
        int line = at == null || !document.asTyped() ? 0 : Math.max(0, at.getLineNumber());
        String message = String.valueOf(e.getMessage());
        int start = message.indexOf("Message: ");
        String said = start < 0 ? message : message.substring(start + "Message: ".length());
        return Refusal.atLine(document.name(), line, "file.noXml", said);
    }
}
