// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/**
 * LibreOffice as judge, in a profile of its own that recalculates every formula of a loaded file: left to itself it trusts the values
 * that the file brings along, and then could find nothing wrong.
 */
public final class Office {
    private static final String RECALCULATE_ALWAYS =
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
            <item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
            </oor:items>
            """;

    private Office() {}

    /** Skips the test where there is no LibreOffice, and says so; fails it where all judges are asked for ({@code releng/test} does). */
    public static void assumePresent() {
        boolean present = Arrays.stream(System.getenv("PATH").split(java.io.File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, "soffice")));
        if (!present) {
            System.out.println("SKIPPED: no soffice on the path, so LibreOffice judges nothing here");
        }
        if (!present && "required".equals(System.getenv("TWINFEED_JUDGES"))) {
            throw new AssertionError("no soffice on the path");
        }
        Assumptions.assumeTrue(present, "no soffice on the path");
    }

    /** Loads files, recalculates them and saves them in another format, under their names in the folder {@code out}. */
    public static void convert(Path folder, String format, Path... files) throws IOException, InterruptedException {
        Path user = Files.createDirectories(folder.resolve("profile/user"));
        Files.writeString(user.resolve("registrymodifications.xcu"), RECALCULATE_ALWAYS);
        List<String> command = new ArrayList<>(List.of(
                "soffice",
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                format,
                "--outdir",
                folder.resolve("out").toString()));
        Arrays.stream(files).map(Path::toString).forEach(command::add);
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("soffice.log").toFile())
                .start();
        if (!process.waitFor(240, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException("soffice did not end within four minutes");
        }
        if (process.exitValue() != 0) {
            throw new IOException("soffice: " + Files.readString(folder.resolve("soffice.log")));
        }
    }
}
