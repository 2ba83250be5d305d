// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.numeric;

import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A finite number, or the named reason why there is none.
 *
 * <p>Immutable. {@link #value()} without a value and {@link #trouble()} with one throw, so that neither can be taken for
 * the other by accident.
 */
public final class Solution {
    private final double value;
    private final @Nullable FailureReason trouble;

    private Solution(double value, @Nullable FailureReason trouble) {
        this.value = value;
        this.trouble = trouble;
    }

    /**
     * Returns a solution with a value.
     *
     * @throws DomainException if the value is NaN or infinite
     */
    public static Solution of(double value) {
        return new Solution(Require.finite(value, "value"), null);
    }

    /** Returns a solution that has no number, for the given reason. */
    public static Solution none(FailureReason trouble) {
        return new Solution(0, Objects.requireNonNull(trouble));
    }

    /** Returns whether there is a number. */
    public boolean isPresent() {
        return trouble == null;
    }

    /**
     * Returns the number.
     *
     * @throws NoSuchElementException if there is none
     */
    public double value() {
        if (trouble != null) {
            throw new NoSuchElementException(trouble.name());
        }
        return value;
    }

    /**
     * Returns why there is no number.
     *
     * @throws NoSuchElementException if there is one
     */
    public FailureReason trouble() {
        if (trouble == null) {
            throw new NoSuchElementException("no trouble: " + value);
        }
        return trouble;
    }

    /** Returns the number, or the given one if there is none. */
    public double orElse(double other) {
        return trouble == null ? value : other;
    }

    /**
     * Returns the function of the number, or this same trouble.
     *
     * @throws DomainException if the function gives NaN or an infinity
     */
    public Solution map(DoubleUnaryOperator function) {
        return trouble == null ? of(function.applyAsDouble(value)) : this;
    }

    /** Returns the solution that the function gives for the number, or this same trouble. */
    public Solution flatMap(DoubleFunction<Solution> function) {
        return trouble == null ? function.apply(value) : this;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Solution that
                && trouble == that.trouble
                && Double.doubleToLongBits(value) == Double.doubleToLongBits(that.value);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(value) + Objects.hashCode(trouble);
    }

    @Override
    public String toString() {
        return trouble == null ? Double.toString(value) : trouble.name();
    }
}
