// SPDX-License-Identifier: EPL-2.0
/**
 * The cable run to a heater and what protects it: current, drop, delivered power, fault protection, and the parts that a change
 * of heater depends on. A desktop result is no inspection: the readings of a competent person and the wiring rules govern.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.circuit;
