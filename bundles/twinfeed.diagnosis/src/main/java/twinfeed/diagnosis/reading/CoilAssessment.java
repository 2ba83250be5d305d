// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.reading;

import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.FaultFinding;
import twinfeed.units.Resistance;

/**
 * The solenoid valve's coil by its resistance.
 *
 * @param open whether the meter showed no continuity
 * @param readingOhm what it read, ohm; absent if it is open or was not measured
 * @param band where a sound one lies; absent where the heater's data do not say
 * @param toleranceShare share of the rated resistance by which a sound one may differ, the meter's error counted
 */
public record CoilAssessment(
        boolean open, @Nullable Double readingOhm, @Nullable ResistanceBand band, double toleranceShare) {
    /** Judges what was measured. */
    public static CoilAssessment of(@Nullable FaultFinding finding, Heater heater, FaultData data) {
        boolean open = finding != null && Boolean.TRUE.equals(finding.getCoilOpen());
        Resistance reading = finding == null || open ? null : finding.getCoil();
        Resistance rated = heater.getCoilResistance();
        if (rated == null || rated.si() <= 0) {
            return new CoilAssessment(open, ohm(reading), null, 0);
        }
        double share = (rated.hasTolerance() ? rated.halfWidthSi() / rated.si() : data.limit("coilTolerance"))
                + (reading != null && reading.hasTolerance()
                        ? reading.halfWidthSi() / rated.si()
                        : data.limit("meterRelative"));
        ResistanceBand band = new ResistanceBand(rated.si(), rated.si() * (1 - share), rated.si() * (1 + share));
        return new CoilAssessment(open, ohm(reading), band, share);
    }

    private static @Nullable Double ohm(@Nullable Resistance reading) {
        return reading == null ? null : Double.valueOf(reading.si());
    }

    /** Whether it was measured. */
    public boolean measured() {
        return open || readingOhm != null;
    }

    /** Whether it is known to be faulty. */
    public boolean faulty() {
        return open || (readingOhm != null && band != null && !band.holds(readingOhm));
    }

    /** Whether it is known to be sound. */
    public boolean sound() {
        return readingOhm != null && band != null && band.holds(readingOhm);
    }
}
