// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

/** Something that the person gave cannot be used; the message is ready to be shown and says what would be right. */
public final class UnusableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** With a message for the person, and the reason for the log. */
    public UnusableException(String message, Throwable cause) {
        super(message, cause);
    }
}
