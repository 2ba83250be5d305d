// SPDX-License-Identifier: EPL-2.0
/** What survey, heater and rule set say about the circuit, in plain numbers for the checks. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.circuit.survey;
