// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import twinfeed.model.io.InvalidValue;
import twinfeed.units.text.Texts;

/** A field that cannot be set by its name. */
public final class FieldException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private static final Texts MESSAGES = new Texts(FieldException.class, "messages");

    private final String wrong;
    private final String right;

    FieldException(String key, String... arguments) {
        this(new InvalidValue(
                MESSAGES.toReader(key + ".wrong", arguments), MESSAGES.toReader(key + ".right", arguments)));
    }

    FieldException(InvalidValue fault) {
        super(fault.wrong() + "; " + fault.right());
        this.wrong = fault.wrong();
        this.right = fault.right();
    }

    /** What is wrong, as a clause. */
    public String wrong() {
        return wrong;
    }

    /** What would be right, as a clause. */
    public String right() {
        return right;
    }
}
