// SPDX-License-Identifier: EPL-2.0
/** The checks on what protects the circuit: earth fault loop, electrode, residual-current device, protective conductor, fault level. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.circuit.protection;
