// SPDX-License-Identifier: EPL-2.0
package twinfeed.assembly;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The bundles that a feature lists. */
final class FeatureFile {
    private FeatureFile() {}

    /**
     * The symbolic names in the named features together.
     *
     * @param features the folder of the features
     * @param names of the features
     * @throws IOException if a feature cannot be read
     */
    static Set<String> bundles(Path features, List<String> names) throws IOException {
        Set<String> bundles = new TreeSet<>();
        for (String name : names) {
            NodeList plugins =
                    parse(features.resolve(name).resolve("feature.xml")).getElementsByTagName("plugin");
            for (int i = 0; i < plugins.getLength(); i++) {
                bundles.add(((Element) plugins.item(i)).getAttribute("id"));
            }
        }
        return bundles;
    }

    private static Element parse(Path file) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            return factory.newDocumentBuilder().parse(file.toFile()).getDocumentElement();
        } catch (ParserConfigurationException | SAXException broken) {
            throw new IOException(file + ": " + broken.getMessage(), broken);
        }
    }
}
