// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.print;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The printers of Windows, by PowerShell; a file is printed by the program that is set up for its kind. */
final class WindowsPrinters implements Printers {
    private static final String NAMES =
            "Get-CimInstance Win32_Printer | Sort-Object -Property Default -Descending | ForEach-Object { $_.Name }";

    private final Commands commands;

    WindowsPrinters(Commands commands) {
        this.commands = commands;
    }

    @Override
    public List<String> names() {
        try {
            return commands.lines(command(NAMES));
        } catch (IOException noPrinting) {
            return List.of();
        }
    }

    @Override
    public boolean firstPageAlone() {
        return false;
    }

    @Override
    public void print(Path file, String printer, boolean firstPage) throws IOException {
        commands.order(command("$ErrorActionPreference = 'Stop'; Start-Process -FilePath " + quoted(file.toString())
                + " -Verb PrintTo -ArgumentList " + quoted('"' + printer + '"')));
    }

    private static List<String> command(String script) {
        return List.of("powershell", "-NoProfile", "-NonInteractive", "-Command", script);
    }

    /** As one word of the script, in which nothing is replaced. */
    private static String quoted(String text) {
        return "'" + text.replace("'", "''") + "'";
    }
}
