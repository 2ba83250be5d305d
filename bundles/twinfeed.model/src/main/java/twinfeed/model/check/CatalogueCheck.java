// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.List;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.CataloguePackage.Literals;

/** Checks a heater catalogue before anything is calculated from it. */
public final class CatalogueCheck {
    private CatalogueCheck() {}

    /**
     * What is wrong with a catalogue.
     *
     * @param catalogue the catalogue; not changed
     * @return problems in the order of the file, errors and warnings mixed; empty if all is well
     */
    public static List<Problem> of(Catalogue catalogue) {
        Problems problems = new Problems();
        NameRules.unique(catalogue.getHeaters(), Literals.HEATER__ID, problems);
        catalogue.getHeaters().forEach(heater -> HeaterRules.entry(heater, problems));
        ObjectRules.checkAll(catalogue, problems);
        return problems.list();
    }
}
