// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.faults;

/**
 * A part with its chance.
 *
 * @param part key of the part
 * @param prior its chance before any answer, 0..1
 * @param chance its chance after all answers, 0..1, if one thing has failed
 */
public record RankedPart(String part, double prior, double chance) {}
