// SPDX-License-Identifier: EPL-2.0
/**
 * What people type, and SI. A reading is parsed against the kind of quantity that is asked for, so that "5C" is a
 * temperature where a temperature is asked and nothing else; inside the program every number is in SI.
 *
 * <p>More than twenty classes: one for each kind of quantity, which all implement one type.
 */
@NullMarked
package twinfeed.units;

import org.jspecify.annotations.NullMarked;
