// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import org.jspecify.annotations.Nullable;

/**
 * What a quantity is made of.
 *
 * @param kind what was asked for
 * @param si the value in the unit {@link Kind#symbol()}
 * @param halfWidthSi half-width or standard uncertainty, in the unit of {@link Kind#ofTolerance()}; 0 without one
 * @param spread what the half-width means
 * @param text as typed, with a decimal point; null if the quantity was computed, so that its text is made on demand
 */
record Reading(Kind kind, double si, double halfWidthSi, Spread spread, @Nullable String text) {
    Reading {
        if (!Double.isFinite(si) || si < kind.lowest()) {
            throw new IllegalArgumentException(kind + ": " + si + " " + kind.symbol() + " is no value of this kind");
        }
        if (!Double.isFinite(halfWidthSi) || halfWidthSi < 0) {
            throw new IllegalArgumentException(kind + ": the half-width " + halfWidthSi + " is not finite and >= 0");
        }
        si += 0.0; // -0.0 becomes 0.0, which its text can say
        halfWidthSi += 0.0;
    }

    static Reading ofSi(Kind kind, double si) {
        return new Reading(kind, si, 0, Spread.NONE, null);
    }

    Reading withSi(double newSi) {
        return new Reading(kind, newSi, halfWidthSi, spread, null);
    }

    Reading withSpread(double newHalfWidthSi, Spread newSpread) {
        return new Reading(kind, si, newHalfWidthSi, newSpread, null);
    }
}
