// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import twinfeed.model.catalogue.Heater;

/** Words that several pages share. */
final class PageTexts {
    private PageTexts() {}

    /** What a unit is called. */
    static String heater(Heater heater, PageParts parts) {
        if (heater.getTitle() != null) {
            return heater.getTitle();
        }
        return heater.getId() == null ? parts.get("fact.unknown") : heater.getId();
    }
}
