// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import org.w3c.dom.Document;

/**
 * The step between two forms that differ in nothing but their version.
 *
 * @param from the form that it reads
 */
record Unchanged(int from) implements Migration {
    @Override
    public void migrate(Document document) {
        // nothing but namespaces and version mark, which every step moves
    }
}
