// SPDX-License-Identifier: EPL-2.0
/**
 * Computing in the open: functions that a calculator publishes by name, what they take and answer, and workings, line by line, that a reader
 * can follow and recompute.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.formula;
