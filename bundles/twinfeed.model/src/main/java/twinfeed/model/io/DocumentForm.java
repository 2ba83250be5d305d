// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EClass;

/** What the root element says about a document: its package and its version stand in its namespace. */
final class DocumentForm {
    /** The version of a namespace that is none of ours. */
    static final int FOREIGN = -1;

    private static final Pattern NAMESPACE = Pattern.compile("urn:twinfeed:([0-9]{1,6}):([a-z]+)");

    private DocumentForm() {}

    static int versionOf(String namespace) {
        Matcher matcher = NAMESPACE.matcher(namespace);
        return matcher.matches() ? Integer.parseInt(matcher.group(1)) : FOREIGN;
    }

    static String packageOf(String namespace) {
        Matcher matcher = NAMESPACE.matcher(namespace);
        return matcher.matches() ? matcher.group(2) : "";
    }

    static String namespace(int version, String packageName) {
        return "urn:twinfeed:" + version + ":" + packageName;
    }

    /** The start tag that a file with this root begins with. */
    static String startTag(EClass root) {
        String prefix = root.getEPackage().getNsPrefix();
        String mark = ModelFile.versionMark(root) == null ? "" : " version=\"" + ModelFile.CURRENT_VERSION + '"';
        return "<" + prefix + ":" + root.getName() + " xmlns:" + prefix + "=\""
                + root.getEPackage().getNsURI() + '"' + mark + ">";
    }
}
