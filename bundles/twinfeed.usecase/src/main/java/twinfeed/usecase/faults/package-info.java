// SPDX-License-Identifier: EPL-2.0
/** The fault-finding of one visit: what the calculator infers, joined with the findings about the two supplies, the next step and the price of a repair. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.faults;
