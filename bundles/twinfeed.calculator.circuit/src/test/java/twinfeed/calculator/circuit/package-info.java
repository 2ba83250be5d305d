// SPDX-License-Identifier: EPL-2.0
/** Tests of the circuit calculator. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.circuit;
