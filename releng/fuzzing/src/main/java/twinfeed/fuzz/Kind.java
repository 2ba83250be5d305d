// SPDX-License-Identifier: EPL-2.0
package twinfeed.fuzz;

import java.util.Locale;

/** What is fuzzed: each kind of file that the program reads. */
enum Kind {
    JOB("input.job"),
    CATALOGUE("input.catalogue"),
    BOOK("input.csv"),
    BOOK_XLSX("input.xlsx"),
    DWELLINGS("input.csv"),
    DWELLINGS_XLSX("input.xlsx"),
    FORM("filled-in.xlsx"),
    FIRM("firm.properties"),
    TEXTS("standing-texts.properties"),
    QUOTE("input.json");

    private final String file;

    Kind(String file) {
        this.file = file;
    }

    /** The name of the file as the program expects it. */
    String file() {
        return file;
    }

    /** The name on the command line: {@code book-xlsx}. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
