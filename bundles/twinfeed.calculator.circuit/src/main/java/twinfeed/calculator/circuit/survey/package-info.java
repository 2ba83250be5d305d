// SPDX-License-Identifier: EPL-2.0
/**
 * What survey, heater and rule set say about the circuit, in plain numbers for the checks.
 *
 * <p>More than twenty classes: one small record for each thing that a survey says of a circuit.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.circuit.survey;
