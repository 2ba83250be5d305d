// SPDX-License-Identifier: EPL-2.0
/** Tests of formulas, their arguments and their workings. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.formula;
