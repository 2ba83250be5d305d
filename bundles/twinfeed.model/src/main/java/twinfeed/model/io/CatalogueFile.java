// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.nio.file.Path;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.CataloguePackage;

/** Heater catalogues, {@code .catalogue}. */
public final class CatalogueFile {
    /** The ending of their names, with the dot. */
    public static final String ENDING = ".catalogue";

    private static final ModelFile<Catalogue> FORM =
            ModelFile.of(CataloguePackage.eINSTANCE.getCatalogue(), Catalogue.class);

    private CatalogueFile() {}

    /**
     * Reads a catalogue; an older form is migrated.
     *
     * @throws InputException if the file is missing or cannot be used; two heaters with one id are refused too
     */
    public static Catalogue load(Path path) {
        return FORM.load(path);
    }

    /**
     * Writes a catalogue; the file appears whole or not at all.
     *
     * @throws InputException if it cannot be written
     */
    public static void save(Catalogue catalogue, Path path) {
        FORM.save(catalogue, path);
    }

    /** The form itself, for reading from and writing to memory. */
    public static ModelFile<Catalogue> form() {
        return FORM;
    }
}
