// SPDX-License-Identifier: EPL-2.0
/**
 * A second model of a shower, written from the published formulas without the program's own: IAPWS-IF97 by a library,
 * Colebrook-White, Darcy-Weisbach, the two-point supply curve, and the cable and demand arithmetic of the wiring rules. It finds every root by
 * bisection and every worst condition by trying all of them, and its figures are compared with the program's in random houses.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.benchmarks.secondmodel;
