// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.numeric;

/** Argument checks of the public functions: an argument comes back unchanged or a {@link DomainException} names it. */
public final class Require {
    private Require() {}

    public static double finite(double value, String argument) {
        if (!Double.isFinite(value)) {
            throw new DomainException(FailureReason.NOT_FINITE, argument, value);
        }
        return value;
    }

    public static double notNegative(double value, String argument) {
        if (finite(value, argument) < 0) {
            throw new DomainException(FailureReason.NEGATIVE, argument, value);
        }
        return value;
    }

    public static double positive(double value, String argument) {
        if (finite(value, argument) <= 0) {
            throw new DomainException(FailureReason.NOT_POSITIVE, argument, value);
        }
        return value;
    }

    public static double within(double value, double lowest, double highest, String argument) {
        if (finite(value, argument) < lowest || value > highest) {
            throw new DomainException(FailureReason.OUTSIDE_RANGE, argument, value);
        }
        return value;
    }

    /** A result that arguments far beyond any house have driven past the range of a double is refused as well. */
    public static double result(double value) {
        return finite(value, "result");
    }
}
