// SPDX-License-Identifier: EPL-2.0
/**
 * Loading, saving and migrating job files and heater catalogues. What cannot be read is refused with the file, the line,
 * the reading, what is wrong and what would be right; what is saved appears whole or not at all.
 */
@NullMarked
package twinfeed.model.io;

import org.jspecify.annotations.NullMarked;
