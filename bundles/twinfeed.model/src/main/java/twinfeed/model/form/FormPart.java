// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.form;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;

/**
 * Questions that belong together: the readings of one thing, or a table with a row for each of several.
 *
 * @param path the way from the job to the thing, or to the list of things
 * @param attributes what is asked, in order
 */
public record FormPart(List<EReference> path, List<EAttribute> attributes) {
    public FormPart {
        path = List.copyOf(path);
        attributes = List.copyOf(attributes);
    }

    /** Whether it is a table: its path ends in a list. */
    public boolean table() {
        return !path.isEmpty() && path.get(path.size() - 1).isMany();
    }

    /** The path with dots between: {@code survey.water.segments}; empty for the job itself. */
    public String key() {
        return key(path);
    }

    /** The key of the table whose rows hold this table's rows, for example the pipes of fittings; empty if there is none. */
    public String parent() {
        for (int end = path.size() - 1; end > 0; end--) {
            if (path.get(end - 1).isMany()) {
                return key(path.subList(0, end));
            }
        }
        return "";
    }

    private static String key(List<EReference> way) {
        return way.stream().map(EReference::getName).collect(Collectors.joining("."));
    }
}
