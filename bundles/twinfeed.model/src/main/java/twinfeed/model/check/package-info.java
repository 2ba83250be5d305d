// SPDX-License-Identifier: EPL-2.0
/**
 * What cannot be right in a survey or a catalogue, before anything is calculated from it: values that cannot be, values that
 * contradict one another, names that lead nowhere. What is merely missing is no problem here: calculators say what they need.
 *
 * <p>More than twenty classes: the rules of each part of the model share what they report problems with, which nobody else makes.
 */
@NullMarked
package twinfeed.model.check;

import org.jspecify.annotations.NullMarked;
