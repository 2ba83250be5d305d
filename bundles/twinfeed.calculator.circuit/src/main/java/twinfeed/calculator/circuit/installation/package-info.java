// SPDX-License-Identifier: EPL-2.0
/** The checks on what the circuit depends on: isolator, instructions, tails, earthing and bonding, consumer unit, room. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.circuit.installation;
