// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import org.eclipse.emf.ecore.EClass;
import twinfeed.model.catalogue.CataloguePackage;

/**
 * How large a document may be. No house and no catalogue comes near; what is larger is a mistake or an attack, and is refused
 * before it costs time.
 *
 * @param each elements of one name in one element
 * @param elements elements in all
 */
record DocumentBounds(int each, int elements) {
    /** Elements in one another. */
    static final int DEPTH = 30;

    private static final DocumentBounds JOB = new DocumentBounds(250, 5_000);
    private static final DocumentBounds CATALOGUE = new DocumentBounds(5_000, 50_000);

    static DocumentBounds of(EClass root) {
        return root.getEPackage() == CataloguePackage.eINSTANCE ? CATALOGUE : JOB;
    }
}
