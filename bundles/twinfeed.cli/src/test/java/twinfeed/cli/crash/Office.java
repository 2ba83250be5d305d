// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.crash;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder with the demonstration's files, in which programs write at once and are killed. */
record Office(Path folder) {
    static Office in(Path folder) throws IOException {
        Path demo = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(demo.resolve("demo"))) {
            demo = demo.getParent();
        }
        for (String name : new String[] {"alder-beck.job", "heaters.catalogue", "prices.csv", "dwellings.csv"}) {
            Files.copy(demo.resolve("demo").resolve(name), folder.resolve(name));
        }
        return new Office(folder);
    }

    Path job() {
        return folder.resolve("alder-beck.job");
    }

    /** The copy of unsaved changes that the window keeps. */
    Path unsaved() {
        return folder.resolve(".alder-beck.job.unsaved");
    }

    Path prices() {
        return folder.resolve("prices.csv");
    }

    Path dwellings() {
        return folder.resolve("dwellings.csv");
    }

    Path workbook() {
        return folder.resolve("quote.xlsx");
    }

    Path pdf() {
        return folder.resolve("quote.pdf");
    }

    Path results() {
        return folder.resolve("results.xlsx");
    }

    Path imported() {
        return folder.resolve("imported.csv");
    }

    Path quotes() {
        return folder.resolve("office");
    }
}
