// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.form;

import java.util.List;

/**
 * A page of a form.
 *
 * @param key what it is about: visit, unit, faults, water, electricity or request
 * @param parts its parts, in the order in which they are filled in
 */
public record FormPage(String key, List<FormPart> parts) {
    public FormPage {
        parts = List.copyOf(parts);
    }
}
