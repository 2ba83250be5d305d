// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.print;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The printers of Linux and macOS, by the commands {@code lpstat} and {@code lp} of POSIX and CUPS. */
final class CupsPrinters implements Printers {
    /** Before the name of the usual printer in the answer of {@code lpstat -d}, whatever the language. */
    private static final String COLON = ":";

    private final Commands commands;

    CupsPrinters(Commands commands) {
        this.commands = commands;
    }

    @Override
    public List<String> names() {
        try {
            List<String> names = new ArrayList<>(commands.lines(List.of("lpstat", "-e")));
            String usual = commands.run(List.of("lpstat", "-d")).text();
            String name = usual.substring(usual.lastIndexOf(COLON) + 1).strip();
            if (names.remove(name)) {
                names.add(0, name);
            }
            return List.copyOf(names);
        } catch (IOException noPrinting) {
            return List.of();
        }
    }

    @Override
    public boolean firstPageAlone() {
        return true;
    }

    @Override
    public void print(Path file, String printer, boolean firstPage) throws IOException {
        List<String> command = new ArrayList<>(List.of("lp", "-d", printer, "-o", "media=A4", "-o", "fit-to-page"));
        if (firstPage) {
            command.addAll(List.of("-P", "1"));
        }
        command.addAll(List.of("--", file.toString()));
        commands.order(command);
    }
}
