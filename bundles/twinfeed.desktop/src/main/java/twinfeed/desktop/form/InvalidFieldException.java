// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

/** Thrown where what a person typed cannot be the value of a field; the message says why and what would be right. */
public final class InvalidFieldException extends Exception {
    private static final long serialVersionUID = 1L;

    /** With the message. */
    public InvalidFieldException(String message) {
        super(message);
    }
}
