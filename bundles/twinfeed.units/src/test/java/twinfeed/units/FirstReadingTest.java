// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.Test;
import tech.units.indriya.function.MultiplyConverter;
import tech.uom.lib.common.function.Converter;

/**
 * What the first reading of a fresh virtual machine loads. The command line pays for it at every start, so a reading in
 * SI must not start the library at all, and one in another unit only its converters, never its catalogue of units.
 */
class FirstReadingTest {

    @Test
    void aReadingInSiLeavesTheLibraryAlone() throws Exception {
        List<String> loaded = classesLoadedBy(Kind.VOLTAGE, "230 V");
        assertTrue(loaded.contains("twinfeed.units.Quantities"), "the log was read");
        assertEquals(
                List.of(),
                loaded.stream().filter(name -> name.startsWith("tech.units.")).toList());
    }

    @Test
    void anotherUnitLoadsConvertersAndNoUnits() throws Exception {
        List<String> loaded = classesLoadedBy(Kind.FLOW, "15 L/min");
        assertTrue(loaded.contains("tech.units.indriya.function.RationalConverter"), "the log was read");
        assertEquals(
                List.of(),
                loaded.stream()
                        .filter(name -> name.startsWith("tech.units.indriya.unit.")
                                || name.startsWith("tech.units.indriya.format.")
                                || name.equals("javax.measure.spi.ServiceProvider"))
                        .toList());
    }

    /** Reads what is given as arguments: kind, text. */
    public static void main(String[] arguments) {
        Quantity quantity = Quantities.parse(Kind.valueOf(arguments[0]), arguments[1]);
        if (!quantity.toString().equals(arguments[1])) {
            throw new IllegalStateException(quantity.toString());
        }
    }

    private static List<String> classesLoadedBy(Kind kind, String text)
            throws IOException, InterruptedException, URISyntaxException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xlog:class+load:stdout:none",
                        "-cp",
                        classPath(),
                        FirstReadingTest.class.getName(),
                        kind.name(),
                        text)
                .redirectErrorStream(true)
                .start();
        String log = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), log);
        return log.lines().map(line -> line.split(" ", 2)[0]).toList();
    }

    private static String classPath() throws URISyntaxException {
        Set<String> places = new LinkedHashSet<>();
        for (Class<?> type : List.of(
                FirstReadingTest.class,
                Quantities.class,
                UnitConverter.class,
                MultiplyConverter.class,
                Converter.class,
                Test.class)) {
            places.add(Path.of(type.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString());
        }
        return String.join(
                File.pathSeparator, Stream.of(places.toArray(String[]::new)).toList());
    }
}
