// SPDX-License-Identifier: EPL-2.0
/** Rule sets: the tables of a wiring standard, read from data files that name their source, their edition and how far each is verified. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.rules;
