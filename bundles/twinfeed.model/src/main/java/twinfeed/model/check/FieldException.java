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
    private final boolean unknown;

    FieldException(String key, String... arguments) {
        this(
                new InvalidValue(
                        MESSAGES.toReader(key + ".wrong", arguments), MESSAGES.toReader(key + ".right", arguments)),
                key.startsWith("field.unknown") || key.equals("field.form"));
    }

    FieldException(InvalidValue fault) {
        this(fault, false);
    }

    private FieldException(InvalidValue fault, boolean unknown) {
        super(fault.wrong() + "; " + fault.right());
        this.wrong = fault.wrong();
        this.right = fault.right();
        this.unknown = unknown;
    }

    /** Whether a name on the way is that of no field, or no name at all; not, whether a value is none. */
    public boolean unknown() {
        return unknown;
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
