// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.numeric;

/**
 * An argument outside the range that a function states: a mistake of the caller, not a result.
 *
 * <p>The parts are there for a user interface to build its own message; {@link #getMessage()} is for a developer's log.
 */
public final class DomainException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final FailureReason trouble;
    private final String argument;
    private final double value;

    /**
     * Creates the exception.
     *
     * @param trouble what is wrong with the argument
     * @param argument the argument's name, with its unit, as the function declares it
     * @param value what was given
     */
    public DomainException(FailureReason trouble, String argument, double value) {
        super(trouble + ": " + argument + " = " + value);
        this.trouble = trouble;
        this.argument = argument;
        this.value = value;
    }

    /** Returns what is wrong with the argument. */
    public FailureReason trouble() {
        return trouble;
    }

    /** Returns the argument's name, with its unit. */
    public String argument() {
        return argument;
    }

    /** Returns the value that was given, which may be NaN. */
    public double value() {
        return value;
    }
}
