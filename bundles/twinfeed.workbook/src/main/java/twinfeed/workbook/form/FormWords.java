// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.form;

import java.util.List;
import org.eclipse.emf.ecore.EAttribute;

/** The words that a reading can be, where they are a closed list; the model's own enumerations are known without it. */
@FunctionalInterface
public interface FormWords {
    /** Stands between a word and its meaning where both are offered: a reader that does not know the list takes what is before it. */
    String MEANS = " \u2013 ";

    /**
     * A word.
     *
     * @param value as a job holds it
     * @param text as a person reads it
     */
    record Word(String value, String text) {}

    /** The words of an attribute, in the order in which they are offered; none where any text is right. */
    List<Word> of(EAttribute attribute);
}
