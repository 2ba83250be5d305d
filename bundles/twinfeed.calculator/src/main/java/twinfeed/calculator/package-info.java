// SPDX-License-Identifier: EPL-2.0
/**
 * What a calculator plug-in is, what it answers, and how the answers of all are brought together.
 *
 * <p>A calculator is one class that implements {@link twinfeed.calculator.Calculator}. It declares the readings that it needs,
 * the quantities that it provides and consumes, and the work that it offers; the runner orders the calculators by these declarations, contains one that throws, and derives each option's verdict.
 *
 * <p>More than twenty classes: all by which a plug-in of a third party states what it is and what it found stands here, so that it looks
 * into one package; formulas and workings, line by line, are in {@link twinfeed.calculator.formula}. What runs plug-ins has packages of its own.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator;
