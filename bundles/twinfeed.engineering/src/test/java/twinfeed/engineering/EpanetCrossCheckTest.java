// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import twinfeed.engineering.network.FixedPressure;
import twinfeed.engineering.network.Network;
import twinfeed.engineering.network.NetworkState;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;

/**
 * Networks with an open tap against EPANET, the public-domain network solver: at least 500 drawn at random, all pipes
 * turbulent, within 1 % of flow and 0.5 % of the source pressure. Solved live where Node and the solver's package are there
 * (releng/test installs it), otherwise against the values recorded from it; the test says which.
 */
class EpanetCrossCheckTest {
    private static final double L_PER_MIN = 1 / 60_000.0;
    private static final int INPUTS = 18;
    private static final Fluid WATER = Fluid.waterAt(10);
    private static List<double[]> recorded = List.of();

    @BeforeAll
    static void read() throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(EpanetCrossCheckTest.class.getResourceAsStream("epanet-networks.csv")),
                StandardCharsets.UTF_8))) {
            recorded = reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("head,"))
                    .map(EpanetCrossCheckTest::numbers)
                    .toList();
        }
    }

    private static double[] numbers(String line) {
        return Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray();
    }

    private static NetworkState solve(double[] n) {
        PipeSegment common = new PipeSegment(n[1], n[2] / 1000, n[3] / 1000, n[4], n[5]);
        PipeSegment shower = new PipeSegment(n[6], n[7] / 1000, n[8] / 1000, n[9], n[10] - n[5]);
        PipeSegment branch = new PipeSegment(n[12], n[13] / 1000, n[14] / 1000, n[15], n[16] - n[5]);
        Tap tap = new Tap(List.of(branch), Outlet.ofCoefficient(n[17] * L_PER_MIN, WATER));
        return Network.of(
                        new FixedPressure(WATER.pressureOfHead(n[0])),
                        List.of(common),
                        List.of(shower),
                        List.of(tap),
                        WATER)
                .atOutlet(Outlet.ofCoefficient(n[11] * L_PER_MIN, WATER), 0);
    }

    private static void compare(double[] network, double unitFlow, double tapFlow, double teeHead, String against) {
        NetworkState state = solve(network);
        String what = against + ": " + Arrays.toString(network);
        assertEquals(unitFlow, state.unitFlowM3PerS() / L_PER_MIN, 0.01 * unitFlow, what);
        assertEquals(tapFlow, state.tapFlowsM3PerS().get(0) / L_PER_MIN, 0.01 * tapFlow, what);
        double head = state.teePressurePa() / WATER.pressureOfHead(1) + network[5];
        assertEquals(teeHead, head, 0.005 * network[0], what);
    }

    @Test
    void agreesWithTheRecordedSolutions() {
        assertTrue(recorded.size() >= 500, recorded.size() + " networks");
        for (double[] row : recorded) {
            compare(row, row[INPUTS], row[INPUTS + 1], row[INPUTS + 2], "EPANET 2.3.5, recorded");
        }
    }

    @Test
    void agreesWithTheSolverWhereItIsThere() throws IOException, InterruptedException {
        Path folder = folder();
        if (!Files.isDirectory(folder.resolve("node_modules")) || !nodeIsThere()) {
            assertFalse(
                    "required".equals(System.getenv("TWINFEED_JUDGES")) && nodeIsThere(),
                    "Node is here and the solver is not: npm install in releng/epanet");
            System.out.println(
                    "EPANET cross-check: no Node or no package here; compared with the recorded values only");
            agreesWithTheRecordedSolutions();
            return;
        }
        List<double[]> solved = live(folder);
        System.out.println("EPANET cross-check: " + solved.size() + " networks solved live");
        assertEquals(recorded.size(), solved.size());
        for (int i = 0; i < solved.size(); i++) {
            double[] answer = solved.get(i);
            compare(recorded.get(i), answer[0], answer[1], answer[2], "EPANET, live");
        }
    }

    private static Path folder() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve("releng/epanet"))) {
            folder = Objects.requireNonNull(folder.getParent());
        }
        return folder.resolve("releng/epanet");
    }

    private static boolean nodeIsThere() throws InterruptedException {
        try {
            return new ProcessBuilder("node", "--version")
                            .redirectErrorStream(true)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException absent) {
            return false;
        }
    }

    private static List<double[]> live(Path folder) throws IOException, InterruptedException {
        Path input = Files.createTempFile("networks", ".csv");
        try {
            try (Writer writer = Files.newBufferedWriter(input)) {
                for (double[] row : recorded) {
                    writer.write(
                            Arrays.stream(row, 0, INPUTS)
                                            .mapToObj(Double::toString)
                                            .collect(Collectors.joining(",")) + "\n");
                }
            }
            Process process = new ProcessBuilder("node", "solve.mjs")
                    .directory(folder.toFile())
                    .redirectInput(input.toFile())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            List<double[]> solved = new ArrayList<>();
            try (BufferedReader reader =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
                reader.lines().map(EpanetCrossCheckTest::numbers).forEach(solved::add);
            }
            assertEquals(0, process.waitFor());
            return solved;
        } finally {
            Files.delete(input);
        }
    }
}
