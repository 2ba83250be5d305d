// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import org.eclipse.emf.ecore.EObject;

/**
 * Where a reading is recorded.
 *
 * @param root an object of the survey
 * @param path path from there, for example {@code size}
 */
public record Place(EObject root, String path) {}
