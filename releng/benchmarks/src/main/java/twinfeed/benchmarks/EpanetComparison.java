// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/**
 * Solves each {@link FreeOutletNetwork} in turns with EPANET (in Node) on the same machine, one length changed each time, compares the
 * flows and prints the ratio of the rates. Ends with status 1 where the flows differ by more than 1 %.
 */
public final class EpanetComparison {
    private static final int ROUNDS = 7;
    private static final int SOLVES = 500_000;
    private static final double LARGEST_DIFFERENCE = 0.01;

    private final BufferedReader answers;
    private final Writer requests;
    private double sum;

    private EpanetComparison(Process node) {
        answers = new BufferedReader(new InputStreamReader(node.getInputStream(), StandardCharsets.UTF_8));
        requests = node.outputWriter(StandardCharsets.UTF_8);
    }

    /** Runs it; the property {@code twinfeed.root} names the folder of the project, which needs releng/epanet/node_modules. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Path.of(System.getProperty("twinfeed.root", ""), "releng", "epanet");
        Process node = new ProcessBuilder("node", "rate.mjs", "on-request")
                .directory(folder.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        boolean equal = true;
        try {
            EpanetComparison comparison = new EpanetComparison(node);
            for (FreeOutletNetwork network : FreeOutletNetwork.values()) {
                equal &= comparison.run(network, System.out);
            }
        } finally {
            node.destroy();
        }
        System.exit(equal ? 0 : 1);
    }

    private boolean run(FreeOutletNetwork network, PrintStream out) throws IOException {
        double difference = largestDifference(network);
        double[] own = new double[ROUNDS];
        double[] epanet = new double[ROUNDS];
        ownRate(network);
        for (int round = 0; round < ROUNDS; round++) {
            own[round] = ownRate(network);
            epanet[round] = Double.parseDouble(answer(network.title));
            out.printf(
                    Locale.ROOT,
                    "round %d: %,.0f and EPANET %,.0f networks a second%n",
                    round + 1,
                    own[round],
                    epanet[round]);
        }
        Arrays.sort(own);
        Arrays.sort(epanet);
        double ours = own[ROUNDS / 2];
        double theirs = epanet[ROUNDS / 2];
        out.printf(
                Locale.ROOT,
                "medians with %s: %,.0f (%.3f us each) and EPANET %,.0f (%.3f us each): %.1f times as many%n",
                network.title,
                ours,
                1e6 / ours,
                theirs,
                1e6 / theirs,
                ours / theirs);
        out.printf(
                Locale.ROOT,
                "flows through the unit with %s at %d lengths differ by at most %.4f %%%n",
                network.title,
                FreeOutletNetwork.LENGTHS,
                100 * difference);
        // So that no solve can be left out as useless.
        return difference <= LARGEST_DIFFERENCE && sum > 0;
    }

    private String answer(String request) throws IOException {
        requests.write(request + "\n");
        requests.flush();
        String line = answers.readLine();
        if (line == null) {
            throw new IOException("no answer of Node: are Node and the package of releng/epanet installed?");
        }
        return line;
    }

    private double largestDifference(FreeOutletNetwork network) throws IOException {
        String[] epanet = answer(network.title + ",flows").split(",");
        double largest = 0;
        for (int step = 0; step < FreeOutletNetwork.LENGTHS; step++) {
            double theirs = Double.parseDouble(epanet[step]);
            largest = Math.max(largest, Math.abs(network.flowLPerMin(step) - theirs) / theirs);
        }
        return largest;
    }

    private double ownRate(FreeOutletNetwork network) {
        long begin = System.nanoTime();
        for (int step = 0; step < SOLVES; step++) {
            sum += network.flowLPerMin(step);
        }
        return SOLVES / ((System.nanoTime() - begin) / 1e9);
    }
}
