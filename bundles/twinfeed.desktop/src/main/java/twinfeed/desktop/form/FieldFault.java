// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

/** What a person typed cannot be the answer; the message says why and what would be right. */
public final class FieldFault extends Exception {
    private static final long serialVersionUID = 1L;

    /** With the message. */
    public FieldFault(String message) {
        super(message);
    }
}
