// SPDX-License-Identifier: EPL-2.0
/** What a house draws at once, with a heater in place of the present one, against its service fuse and main switch. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.demand;
