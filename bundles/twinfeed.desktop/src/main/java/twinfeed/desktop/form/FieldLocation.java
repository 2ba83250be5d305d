// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import org.eclipse.emf.ecore.EObject;

/**
 * Where a reading is recorded: an object of the survey and the way from it to the reading.
 *
 * @param root an object of the survey
 * @param path path from there, for example {@code size}
 */
public record FieldLocation(EObject root, String path) {}
