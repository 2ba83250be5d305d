// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * What a technician meets, by {@code technician.csv}: a second person's view of faults and of what shows with them, which knows nothing of
 * the program's likelihoods. Every chance is shifted at random on top of it, for no two technicians agree.
 */
final class Technician {
    private static final Map<String, Double> CHANCES = Map.of(
            "always",
            0.96,
            "mostly",
            0.85,
            "often",
            0.65,
            "half",
            0.5,
            "sometimes",
            0.3,
            "seldom",
            0.1,
            "hardly",
            0.03,
            "never",
            0.005);
    private static final String ANY = "any";

    private final Map<String, Double> calls = new LinkedHashMap<>();
    private final Map<String, Map<String, Double>> shows = new LinkedHashMap<>();
    private final double shift;
    private final Random shifts;

    /**
     * One of them.
     *
     * @param shift by how much the chances differ from the file, as a standard deviation of their log odds
     * @param seed seed of the shifts
     */
    Technician(double shift, long seed) {
        this.shift = shift;
        this.shifts = new Random(seed);
        try (InputStream stream = Technician.class.getResourceAsStream("technician.csv");
                Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .setCommentMarker('#')
                    .build()
                    .parse(reader)
                    .getRecords()
                    .forEach(this::read);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private void read(CSVRecord row) {
        String fault = row.get("fault");
        if (!row.get("calls").isEmpty()) {
            calls.put(fault, Double.valueOf(row.get("calls")));
        }
        if (!row.get("observation").isEmpty()) {
            shows.computeIfAbsent(fault, each -> new LinkedHashMap<>()).put(row.get("observation"), chance(row));
        }
    }

    private double chance(CSVRecord row) {
        Double chance = CHANCES.get(row.get("shows"));
        if (chance == null) {
            throw new IllegalArgumentException(row + ": no such word");
        }
        double odds = Math.log(chance / (1 - chance)) + shift * shifts.nextGaussian();
        return 1 / (1 + Math.exp(-odds));
    }

    Set<String> faults() {
        return calls.keySet();
    }

    /** The observations that he names. */
    Set<String> observations() {
        Set<String> all = new java.util.TreeSet<>();
        shows.values().forEach(each -> all.addAll(each.keySet()));
        return all;
    }

    /** The fault of the next visit. */
    String fault(Random random) {
        double at = random.nextDouble()
                * calls.values().stream().mapToDouble(Double::doubleValue).sum();
        String last = "";
        for (Map.Entry<String, Double> each : calls.entrySet()) {
            last = each.getKey();
            at -= each.getValue();
            if (at < 0) {
                break;
            }
        }
        return last;
    }

    /** How often an observation is so with a fault. */
    double chance(String fault, String observation) {
        Map<String, Double> own = shows.getOrDefault(fault, Map.of());
        return own.getOrDefault(observation, shows.get(ANY).getOrDefault(observation, CHANCES.get("never")));
    }
}
