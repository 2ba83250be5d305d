// SPDX-License-Identifier: EPL-2.0
/** Messages and numbers in the language of their reader: one form of property files, of placeholders and of numbers for the whole program. */
@NullMarked
package twinfeed.units.text;

import org.jspecify.annotations.NullMarked;
