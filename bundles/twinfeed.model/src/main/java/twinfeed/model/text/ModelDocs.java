// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.text;

import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import twinfeed.units.text.Texts;

/**
 * What the model says about its own classes and attributes: meaning, unit, valid range. Forms and help show it. The generated
 * code leaves the documentation out, so that starting costs nothing; it is read from the packaged Ecore file when first asked.
 */
public final class ModelDocs {
    private static final String FILE = "/model/twinfeed.ecore";

    /** Languages beside the model's own English: {@code CLASS}, {@code CLASS.FEATURE}. */
    private static final Texts TRANSLATED = new Texts(ModelDocs.class, "documentation");

    private ModelDocs() {}

    /** The documentation of a feature; empty if it is none of this model's. */
    public static String of(EStructuralFeature feature) {
        return find(path(feature.getEContainingClass()), feature);
    }

    /** The same in a language, with units as they are printed, for which the model's file keeps to plain letters. */
    public static String printed(EStructuralFeature feature, Locale locale) {
        String name = feature.getEContainingClass().getName() + "." + feature.getName();
        @Nullable String translated = TRANSLATED.find(locale, name);
        return translated == null ? of(feature).replace("degC", "\u00b0C") : translated;
    }

    /** The documentation of a class in a language. */
    public static String printed(EClass type, Locale locale) {
        @Nullable String translated = TRANSLATED.find(locale, type.getName());
        return translated == null ? of(type) : translated;
    }

    /** The documentation of a class, an enumeration or a data type; empty if it has none. */
    public static String of(EClassifier classifier) {
        return find(classifier.getEPackage().getName(), classifier);
    }

    /** The documentation of a literal; empty if it is none of this model's. */
    public static String of(EEnumLiteral literal) {
        return find(path(literal.getEEnum()), literal);
    }

    /** The documentation of a package; empty if it has none. */
    public static String of(EPackage pack) {
        return Holder.DOCS.getOrDefault(pack.getName(), "");
    }

    private static String find(String path, ENamedElement element) {
        return Holder.DOCS.getOrDefault(path + "." + element.getName(), "");
    }

    private static String path(EClassifier classifier) {
        return classifier.getEPackage().getName() + "." + classifier.getName();
    }

    /** Read at the first question only. */
    private static final class Holder {
        static final Map<String, String> DOCS = read();

        private static Map<String, String> read() {
            try (InputStream stream = Objects.requireNonNull(ModelDocs.class.getResourceAsStream(FILE), FILE)) {
                XMLStreamReader reader = XMLInputFactory.newDefaultFactory().createXMLStreamReader(stream);
                return collect(reader);
            } catch (XMLStreamException | java.io.IOException e) {
                throw new IllegalStateException(FILE, e);
            }
        }

        private static Map<String, String> collect(XMLStreamReader reader) throws XMLStreamException {
            Map<String, String> docs = new HashMap<>();
            Deque<String> names = new ArrayDeque<>();
            while (reader.hasNext()) {
                int event = reader.next();
                if (event == XMLStreamConstants.END_ELEMENT) {
                    names.removeLast();
                } else if (event == XMLStreamConstants.START_ELEMENT) {
                    names.addLast(named(reader));
                    note(reader, names, docs);
                }
            }
            return docs;
        }

        /** The root package, annotations and their details have no part in a path. */
        private static String named(XMLStreamReader reader) {
            boolean inPath = reader.getLocalName().matches("eSubpackages|eClassifiers|eStructuralFeatures|eLiterals");
            return inPath ? reader.getAttributeValue(null, "name") : "";
        }

        private static void note(XMLStreamReader reader, Deque<String> names, Map<String, String> docs) {
            if (reader.getLocalName().equals("details")
                    && "documentation".equals(reader.getAttributeValue(null, "key"))) {
                String path = String.join(
                        ".", names.stream().filter(name -> !name.isEmpty()).toList());
                docs.put(path, reader.getAttributeValue(null, "value"));
            }
        }
    }
}
