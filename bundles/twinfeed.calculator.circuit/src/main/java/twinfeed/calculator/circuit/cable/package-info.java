// SPDX-License-Identifier: EPL-2.0
/** The checks on the cable: current, capacity, voltage drop, delivered power, and how far and how strong the circuit can go. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.circuit.cable;
