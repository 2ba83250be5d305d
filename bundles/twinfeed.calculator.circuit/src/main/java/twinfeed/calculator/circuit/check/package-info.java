// SPDX-License-Identifier: EPL-2.0
/** What a group of checks is, the list of the checks, and how missing data are reported. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.circuit.check;
