// SPDX-License-Identifier: EPL-2.0
/** A question without a job: what a circuit carries, and what a heater needs. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.quick;
