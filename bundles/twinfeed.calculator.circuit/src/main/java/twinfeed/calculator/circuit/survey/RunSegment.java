// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.rules.CableSize;
import twinfeed.calculator.rules.Cables;
import twinfeed.calculator.rules.Method;
import twinfeed.engineering.cable.CableSegment;
import twinfeed.model.survey.Confidence;

/**
 * A piece of the cable run with what the tables say about it; what survey or tables do not say is absent.
 *
 * @param name what the survey calls it, or its number
 * @param sizeMm2 cross-section of its line conductor as surveyed, mm2
 * @param lengthM length, m
 * @param size its line in the cable table
 * @param cpcMm2 cross-section of its protective conductor, mm2
 * @param loopOhmPerM R1 + R2 at 20 degC, ohm/m
 * @param place how it lies
 * @param state whether it is old, and whether it has a protective conductor
 */
public record RunSegment(
        String name,
        @Nullable Double sizeMm2,
        @Nullable Double lengthM,
        @Nullable CableSize size,
        @Nullable Double cpcMm2,
        @Nullable Double loopOhmPerM,
        Place place,
        State state) {
    /**
     * What may condemn a segment whatever its size.
     *
     * @param old whether it is of an old construction that has to be renewed
     * @param withoutCpc whether it is said to have no protective conductor
     */
    public record State(boolean old, boolean withoutCpc) {}

    /**
     * How a segment lies.
     *
     * @param word its reference method as surveyed, empty if unset
     * @param method its reference method, absent if unset or unknown to the rule set
     * @param confidence how sure that is
     * @param ca factor for ambient temperature, absent beyond the table
     * @param cg factor for grouping, absent beyond the table
     * @param ci factor for the insulated length, 1 where the method already contains it
     * @param hotCa factor for the ambient temperature that a loft may have, where the segment lies free in one and nobody measured it;
     *     absent otherwise
     */
    public record Place(
            String word,
            @Nullable Method method,
            Confidence confidence,
            @Nullable Double ca,
            @Nullable Double cg,
            double ci,
            @Nullable Double hotCa) {
        public boolean seen() {
            return confidence == Confidence.SEEN;
        }
    }

    /** The same segment where it lies otherwise. */
    public RunSegment placed(Place other) {
        return new RunSegment(name, sizeMm2, lengthM, size, cpcMm2, loopOhmPerM, other, state);
    }

    /** Tabulated capacity of this cable for a reference method, A; absent where the table has none. */
    @Nullable
    public Double tabulatedA(String method) {
        return size != null && size.currentA(method).isPresent()
                ? Double.valueOf(size.currentA(method).getAsDouble())
                : null;
    }

    /** The segment for the engineering functions as if it lay by some method; absent while something is not known. */
    @Nullable
    public CableSegment placed(Method method, double deviceFactor) {
        return placed(method, deviceFactor, place.ca);
    }

    /** The same with another factor for ambient temperature. */
    public @Nullable CableSegment placed(Method method, double deviceFactor, @Nullable Double ca) {
        Double tabulatedA = tabulatedA(method.key());
        Double cg = place.cg;
        if (size == null || tabulatedA == null || ca == null || cg == null) {
            return null;
        }
        double ci = method.insulated() ? 1 : place.ci;
        return new CableSegment(lengthM == null ? 0 : lengthM, size.dropVPerAm(), tabulatedA, ca, cg, ci, deviceFactor);
    }

    /** What its protective conductor carries for ever where it lies, A: as a cable with line conductors of its size; absent if not known. */
    public @Nullable Double protectiveCapacityA(Cables cables) {
        Method method = place.method;
        if (size == null || cpcMm2 == null || method == null) {
            return null;
        }
        CableSize alike = cables.find(size.cable(), cpcMm2).orElse(null);
        CableSegment placed = alike == null
                ? null
                : new RunSegment(name, cpcMm2, lengthM, alike, cpcMm2, loopOhmPerM, place, state).placed(method, 1);
        return placed == null ? null : Double.valueOf(placed.capacityA());
    }

    /** The segment as a resistance only; absent while size or length is not known. */
    @Nullable
    public CableSegment resistive() {
        return size == null || lengthM == null
                ? null
                : new CableSegment(lengthM, size.dropVPerAm(), size.sizeMm2(), 1, 1, 1, 1);
    }
}
