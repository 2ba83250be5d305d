// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import java.util.List;
import org.eclipse.emf.ecore.EObject;
import twinfeed.desktop.form.Choice;
import twinfeed.desktop.form.InvalidFieldException;
import twinfeed.desktop.session.SurveyEdits;

/** One value of the entries of a list: what it is called, how it is shown and typed. */
interface EntryField {
    /** Name of the value, as in the model. */
    String name();

    /** What a person calls it. */
    String label();

    /** What it is; empty if nobody says. */
    String help();

    /** What stands in an empty field: the unit. */
    String hint();

    /** The value of an entry as text; empty if it has none. */
    String show(EObject entry);

    /**
     * Takes what was typed; nothing typed takes the value away.
     *
     * @throws InvalidFieldException if it cannot be the value; nothing is changed then
     */
    void type(EObject entry, String typed, SurveyEdits edits) throws InvalidFieldException;

    /** The answers to pick from; none for a text. */
    List<Choice> choices();
}
