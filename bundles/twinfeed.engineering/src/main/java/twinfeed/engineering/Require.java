// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

/** The checks at every public door: an argument comes back unchanged or a {@link DomainException} names it. */
final class Require {
    private Require() {}

    static double finite(double value, String argument) {
        if (!Double.isFinite(value)) {
            throw new DomainException(Trouble.NOT_FINITE, argument, value);
        }
        return value;
    }

    static double notNegative(double value, String argument) {
        if (finite(value, argument) < 0) {
            throw new DomainException(Trouble.NEGATIVE, argument, value);
        }
        return value;
    }

    static double positive(double value, String argument) {
        if (finite(value, argument) <= 0) {
            throw new DomainException(Trouble.NOT_POSITIVE, argument, value);
        }
        return value;
    }

    static double within(double value, double lowest, double highest, String argument) {
        if (finite(value, argument) < lowest || value > highest) {
            throw new DomainException(Trouble.OUTSIDE_RANGE, argument, value);
        }
        return value;
    }

    /** A result that arguments far beyond any house have driven past the range of a double is refused as well. */
    static double result(double value) {
        return finite(value, "result");
    }

    static double waterTemperature(double temperatureC, String argument) {
        if (finite(temperatureC, argument) < Water.LOWEST_C || temperatureC > Water.HIGHEST_C) {
            throw new DomainException(Trouble.OUTSIDE_WATER_RANGE, argument, temperatureC);
        }
        return temperatureC;
    }
}
