// SPDX-License-Identifier: EPL-2.0
/**
 * Loading, saving and migrating job files and heater catalogues. What cannot be read is refused with the file, the line,
 * the reading, what is wrong and what would be right; what is saved appears whole or not at all.
 *
 * <p>More than twenty classes: the reading of one kind of file shares with that of the others how text becomes a model, how a fault in it is named
 * and how a file is replaced; half of the classes are hidden here for that.
 */
@NullMarked
package twinfeed.model.io;

import org.jspecify.annotations.NullMarked;
