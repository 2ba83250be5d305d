// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import twinfeed.model.survey.SurveyPackage;

/**
 * What the model itself says about its readings: meaning, unit, range, and what holds where a reading is not given. Read from
 * the model's own definition, so that help and model cannot drift apart.
 */
public final class Documentation {
    private static final String DEFINITION = "model/twinfeed.ecore";
    private static final Pattern FALLBACK = Pattern.compile("unset means ([^;.]+)");

    private final Map<String, String> byKey;

    private Documentation(Map<String, String> byKey) {
        this.byKey = byKey;
    }

    /** The documentation of the whole model. */
    public static Documentation ofModel() {
        ClassLoader loader = SurveyPackage.class.getClassLoader();
        try (InputStream stream = loader.getResourceAsStream(DEFINITION)) {
            if (stream == null) {
                throw new IllegalStateException("the model's bundle lacks " + DEFINITION);
            }
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return new Documentation(texts(factory.newDocumentBuilder().parse(stream)));
        } catch (IOException | SAXException | ParserConfigurationException broken) {
            throw new IllegalStateException(DEFINITION + " cannot be read", broken);
        }
    }

    private static Map<String, String> texts(Document document) {
        Map<String, String> texts = new LinkedHashMap<>();
        NodeList features = document.getElementsByTagName("eStructuralFeatures");
        for (int i = 0; i < features.getLength(); i++) {
            Element feature = (Element) features.item(i);
            Element owner = (Element) feature.getParentNode();
            NodeList details = feature.getElementsByTagName("details");
            if (details.getLength() > 0) {
                texts.put(
                        owner.getAttribute("name") + "." + feature.getAttribute("name"),
                        ((Element) details.item(0)).getAttribute("value"));
            }
        }
        return texts;
    }

    /** What a reading is; empty if the model does not say. */
    public String help(EStructuralFeature feature) {
        return byKey.getOrDefault(feature.getEContainingClass().getName() + "." + feature.getName(), "")
                .replace("degC", "°C");
    }

    /** What holds where the reading is not given, if the model says so. */
    public Optional<String> fallback(EStructuralFeature feature) {
        Matcher matcher = FALLBACK.matcher(help(feature));
        return matcher.find() ? Optional.of(matcher.group(1)) : Optional.empty();
    }
}
