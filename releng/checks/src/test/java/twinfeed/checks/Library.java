// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/**
 * One library in one version, as a pom or the target definition names it.
 *
 * @param name group and artifact, with a colon between
 * @param version as written, properties filled in
 * @param scope of a pom; empty for the default
 */
record Library(String name, String version, String scope) {
    private static final Pattern PROPERTY = Pattern.compile("\\$\\{([^}]+)}");

    /** The {@code dependency} elements below an element. */
    static List<Library> below(Element above, Map<String, String> properties) {
        return Project.all(above, "dependency").stream()
                .map(element -> of(element, properties))
                .toList();
    }

    private static Library of(Element element, Map<String, String> properties) {
        String version = PROPERTY.matcher(Project.text(element, "version"))
                .replaceAll((MatchResult found) -> properties.getOrDefault(found.group(1), "?" + found.group(1)));
        return new Library(
                Project.text(element, "groupId") + ":" + Project.text(element, "artifactId"),
                version,
                Project.text(element, "scope"));
    }

    boolean ours() {
        return name.startsWith("twinfeed:");
    }
}
