// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.data;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Prior weights, likelihoods and limits of the fault-finding, all of them judgement, from one data file.
 *
 * @param source where they come from
 * @param status how far they are verified
 * @param parts the parts in the file's order, by key
 * @param observations the observations in the file's order, by key
 * @param first observations that are asked before anything else once another was answered with yes, in order, by that other
 * @param limits the limits, by key
 */
public record FaultData(
        String source,
        String status,
        Map<String, FaultPart> parts,
        Map<String, Observation> observations,
        Map<String, List<String>> first,
        Map<String, Double> limits) {
    /** The supplies, where they and no part of the unit are the cause. */
    public static final String SUPPLY = "supply";

    /** What the list does not know. */
    public static final String NONE = "none";

    /** System property that names a data file to be used instead of the one of the program. */
    public static final String FILE = "twinfeed.faults";

    private static final String OWN = "faults.csv";
    private static final Map<String, FaultData> READ = new ConcurrentHashMap<>();

    public FaultData {
        parts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        observations = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(observations));
        first = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(first));
        limits = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(limits));
    }

    /**
     * The data in force: the file that the system property {@link #FILE} names, or the program's own.
     *
     * @throws IllegalArgumentException if the file is no fault data; the message names row and column
     */
    public static FaultData current() {
        return READ.computeIfAbsent(System.getProperty(FILE, ""), FaultData::open);
    }

    /** The program's own data, whatever the system property says. */
    public static FaultData own() {
        return READ.computeIfAbsent("", FaultData::open);
    }

    private static FaultData open(String file) {
        try (InputStream stream =
                file.isEmpty() ? FaultData.class.getResourceAsStream(OWN) : Files.newInputStream(Path.of(file))) {
            if (stream == null) {
                throw new IllegalStateException(OWN + " is missing");
            }
            return FaultDataReader.read(file.isEmpty() ? OWN : file, stream);
        } catch (IOException unreadable) {
            throw DataRefusal.of(unreadable, "faults.unreadable", file.isEmpty() ? OWN : file);
        }
    }

    /**
     * Reads fault data.
     *
     * @param name what to call them in messages
     * @param stream UTF-8 text
     * @throws IllegalArgumentException if it is no fault data; the message names row and column
     */
    public static FaultData read(String name, InputStream stream) {
        return FaultDataReader.read(name, stream);
    }

    /** The part of a key. */
    public FaultPart part(String key) {
        return Optional.ofNullable(parts.get(key))
                .orElseThrow(() -> new IllegalArgumentException("no part " + key + " in the fault data"));
    }

    /** The observation of a key, if the data know it. */
    public Optional<Observation> observation(String key) {
        return Optional.ofNullable(observations.get(key));
    }

    /** A limit. */
    public double limit(String key) {
        return Optional.ofNullable(limits.get(key))
                .orElseThrow(() -> new IllegalArgumentException("no limit " + key + " in the fault data"));
    }

    /** The same for a unit that does not have some parts, which then take no chance. */
    public FaultData without(Collection<String> lacking) {
        Map<String, FaultPart> others = new LinkedHashMap<>(parts);
        others.keySet().removeAll(lacking);
        return new FaultData(source, status, others, observations, first, limits);
    }

    /** The same without the observations for which the unit has to run. */
    public FaultData unpowered() {
        Map<String, Observation> others = new LinkedHashMap<>(observations);
        others.values().removeIf(Observation::powered);
        return new FaultData(source, status, parts, others, first, limits);
    }

    /** Keys of the parts, in order. */
    public List<String> partKeys() {
        return List.copyOf(parts.keySet());
    }

    /** Prior chance of a part, 0..1. */
    public double prior(String part) {
        double all = parts.values().stream().mapToDouble(FaultPart::weight).sum();
        return part(part).weight() / all;
    }
}
