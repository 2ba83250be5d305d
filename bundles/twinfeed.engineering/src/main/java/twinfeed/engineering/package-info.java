// SPDX-License-Identifier: EPL-2.0

/**
 * The engineering of instantaneous electric showers: water, heat, pipes, supply, cables and their protection.
 *
 * <p>Every class is stateless or an immutable record, so all of it may be used from any number of threads. Quantities
 * are SI doubles that carry their unit in their name; temperatures are degrees Celsius, and pressures are gauge
 * pressures, unless a name says otherwise. Flows are volumes at the intake temperature unless called mass flows.
 *
 * <p>A legitimate question that has no number for an answer ("which flow heats water to less than its intake
 * temperature?") gives a {@link twinfeed.engineering.numeric.Solution} that holds a named
 * {@link twinfeed.engineering.numeric.FailureReason}. An argument outside the range that a function states is a mistake of the caller
 * and throws a {@link twinfeed.engineering.numeric.DomainException}. No function returns NaN or an infinity.
 *
 * <p>Tables of standards are parameters here and never stand in the code. The current edition of the wiring rules, the
 * installer's own copy of their tables, and licensed practice govern over anything computed.
 */
@NullMarked
package twinfeed.engineering;

import org.jspecify.annotations.NullMarked;
