// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.Power;

class CatalogueCheckTest {
    @Test
    void emptyCatalogueIsNoProblem() {
        assertTrue(
                CatalogueCheck.of(CatalogueFactory.eINSTANCE.createCatalogue()).isEmpty());
    }

    @Test
    void heatersNeedAnIdOfTheirOwn() {
        Catalogue catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        catalogue.getHeaters().add(heater("h85"));
        catalogue.getHeaters().add(heater("h85"));
        catalogue.getHeaters().add(CatalogueFactory.eINSTANCE.createHeater());
        assertEquals(
                List.of(
                        "error: heaters[h85].id \"h85\": the name is used twice; give each piece its own name",
                        "error: heaters[3].id: the heater has no id; give it a short one that no other heater has, like h95"),
                CatalogueCheck.of(catalogue).stream().map(Problem::toString).toList());
    }

    @Test
    void everyHeaterIsChecked() {
        Catalogue catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        catalogue.getHeaters().add(heater("h85"));
        catalogue.getHeaters().get(0).setPower(Power.valueOf("0 kW"));
        assertEquals("heaters[h85].power", CatalogueCheck.of(catalogue).get(0).path());
    }

    private static Heater heater(String id) {
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        heater.setId(id);
        return heater;
    }
}
