// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.print;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The printers of this computer. */
public interface Printers {
    /** Those of the system on which the program runs. */
    static Printers ofThisSystem() {
        Commands commands = new SystemCommands();
        return System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows")
                ? new WindowsPrinters(commands)
                : new CupsPrinters(commands);
    }

    /** Their names, the usual one first; empty if none is set up. Asks the system, which may take a second. */
    List<String> names();

    /** Whether the first page alone can be printed. */
    boolean firstPageAlone();

    /**
     * Prints a file.
     *
     * @param file a PDF or a PNG
     * @param printer one of {@link #names()}
     * @param firstPage whether only its first page is printed
     * @throws IOException if the system refuses it; the message is what the system says
     */
    void print(Path file, String printer, boolean firstPage) throws IOException;
}
