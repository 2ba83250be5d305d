// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

/**
 * A part with its chance.
 *
 * @param part key of the part
 * @param prior its chance before any answer, 0..1
 * @param chance its chance after all answers, 0..1, if one thing has failed
 */
public record RankedPart(String part, double prior, double chance) {
    /** The greatest chance that is printed: answers are not as independent as Bayes' rule takes them to be. */
    public static final double MOST_PRINTED = 0.99;

    /** The chance as it is printed, per cent; never certain. */
    public double percent() {
        return 100 * Math.min(chance, MOST_PRINTED);
    }
}
