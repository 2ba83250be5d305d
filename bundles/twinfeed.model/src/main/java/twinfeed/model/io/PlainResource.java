// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.XMLLoad;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMLLoadImpl;
import org.eclipse.emf.ecore.xmi.impl.XMLResourceImpl;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A resource for one reading or one writing: no resource set, so nothing is looked up and nothing else is loaded. The JDK's
 * own parser is asked for by name: a service look-up costs time at start, and would take whatever parser lies on the path.
 */
final class PlainResource extends XMLResourceImpl {
    private static final int LINE_WIDTH = 100;

    EObject read(String text) throws IOException {
        load(new InputSource(new StringReader(text)), reading());
        EObject root = getContents().get(0);
        getContents().clear();
        return root;
    }

    byte[] write(EObject root) throws IOException {
        getContents().add(root);
        ByteArrayOutputStream out = new ByteArrayOutputStream(16_384);
        save(out, writing());
        return out.toByteArray();
    }

    private static Map<Object, Object> reading() {
        Map<Object, Object> options = new HashMap<>();
        options.put(XMLResource.OPTION_DEFER_ATTACHMENT, Boolean.TRUE);
        options.put(XMLResource.OPTION_DEFER_IDREF_RESOLUTION, Boolean.TRUE);
        options.put(XMLResource.OPTION_DISABLE_NOTIFY, Boolean.TRUE);
        options.put(XMLResource.OPTION_USE_LEXICAL_HANDLER, Boolean.FALSE);
        return options;
    }

    private static Map<Object, Object> writing() {
        Map<Object, Object> options = new HashMap<>();
        options.put(XMLResource.OPTION_ENCODING, StandardCharsets.UTF_8.name());
        options.put(XMLResource.OPTION_LINE_WIDTH, LINE_WIDTH);
        options.put(Resource.OPTION_LINE_DELIMITER, "\n");
        return options;
    }

    @Override
    protected XMLLoad createXMLLoad() {
        return new XMLLoadImpl(createXMLHelper()) {
            @Override
            protected SAXParser makeParser() throws ParserConfigurationException, SAXException {
                return parser();
            }
        };
    }

    @Override
    protected XMLLoad createXMLLoad(Map<?, ?> options) {
        return createXMLLoad();
    }

    private static SAXParser parser() throws ParserConfigurationException, SAXException {
        SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
        factory.setNamespaceAware(true);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newSAXParser();
    }
}
