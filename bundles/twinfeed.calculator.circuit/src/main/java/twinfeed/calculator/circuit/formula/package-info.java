// SPDX-License-Identifier: EPL-2.0
/** The functions that the calculator publishes for the command line, the help and the workings. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.circuit.formula;
