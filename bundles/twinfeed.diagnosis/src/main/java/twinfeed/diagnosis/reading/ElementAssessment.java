// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.reading;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.engineering.water.Heat;
import twinfeed.model.catalogue.Element;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.ElementReading;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.usual.UsualValues;
import twinfeed.units.Resistance;

/**
 * The heating elements by their cold resistances: each against Ur^2/Pr of its own share of the rated power, within the
 * tolerance of the appliance's power and the error of the meter; and all of them in parallel.
 *
 * @param states the elements that were measured
 * @param listed how many elements the heater has; 0 where its data do not say
 * @param ratedW rated power, W; 0 where it is not known
 * @param ratedV voltage of the rating, V; 0 where it is not known
 */
public record ElementAssessment(List<ElementState> states, int listed, double ratedW, double ratedV) {
    public ElementAssessment {
        states = List.copyOf(states);
    }

    /** Judges what was measured. */
    public static ElementAssessment of(@Nullable FaultFinding finding, Heater heater, FaultData data) {
        double ratedW = heater.getPower() == null ? 0 : heater.getPower().si();
        double ratedV = heater.getVoltage() == null ? 0 : heater.getVoltage().si();
        double[] shares = shares(heater, ratedW);
        List<ElementState> states = new ArrayList<>();
        if (finding != null) {
            for (ElementReading each : finding.getElements()) {
                state(each, states.size(), shares, ratedV, heater, data, states);
            }
        }
        return new ElementAssessment(states, shares.length, ratedW, ratedV);
    }

    private static void state(
            ElementReading reading,
            int at,
            double[] shares,
            double ratedV,
            Heater heater,
            FaultData data,
            List<ElementState> states) {
        boolean open = Boolean.TRUE.equals(reading.getOpen());
        Resistance resistance = reading.getResistance();
        if (!open && resistance == null) {
            return;
        }
        String name = reading.getName() == null ? String.valueOf(at + 1) : reading.getName();
        ResistanceBand band = at < shares.length && ratedV > 0 && shares[at] > 0
                ? band(Heat.elementResistance(shares[at], ratedV), resistance, heater, data)
                : null;
        states.add(new ElementState(name, open ? null : Double.valueOf(resistance.si()), band));
    }

    /** Shares of the rated power by element; one element of the whole power where none is listed. */
    private static double[] shares(Heater heater, double ratedW) {
        List<Element> elements = heater.getElements();
        if (elements.isEmpty()) {
            return ratedW > 0 ? new double[] {ratedW} : new double[0];
        }
        double[] shares = new double[elements.size()];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = elements.get(i).getPower() == null
                    ? 0
                    : elements.get(i).getPower().si();
        }
        return shares;
    }

    /** More power is less resistance: the upper tolerance of the power gives the least resistance. */
    static ResistanceBand band(double ratedOhm, @Nullable Resistance reading, Heater heater, FaultData data) {
        double leastOhm = ratedOhm / (1 + UsualValues.powerUp(heater));
        double mostOhm = ratedOhm / (1 - UsualValues.powerDown(heater));
        double errorOhm = reading != null && reading.hasTolerance()
                ? reading.halfWidthSi()
                : meterErrorOhm(reading == null ? ratedOhm : reading.si(), data);
        return new ResistanceBand(ratedOhm, leastOhm - errorOhm, mostOhm + errorOhm);
    }

    /** Where a sound resistance of some rating lies when it is measured with a usual meter. */
    public static ResistanceBand sound(double ratedOhm, Heater heater, FaultData data) {
        return band(ratedOhm, null, heater, data);
    }

    static double meterErrorOhm(double readingOhm, FaultData data) {
        return data.limit("meterRelative") * readingOhm + data.limit("meterAbsolute");
    }

    /** Whether anything was measured. */
    public boolean measured() {
        return !states.isEmpty();
    }

    /** Whether an element is open or outside its band. */
    public boolean faulty() {
        return states.stream().anyMatch(ElementState::faulty);
    }

    /** Whether every element of the heater was measured and found sound. */
    public boolean sound() {
        return listed > 0 && states.size() >= listed && states.stream().allMatch(ElementState::sound);
    }

    /** Resistances of the elements that conduct, ohm, in the order of the readings; those of no resistance are left out. */
    public double[] conductingOhm() {
        return states.stream()
                .map(ElementState::readingOhm)
                .filter(reading -> reading != null && reading > 0)
                .mapToDouble(reading -> reading == null ? 0 : reading)
                .toArray();
    }

    /** Power of the elements that conduct, all in parallel at the rated voltage, W; 0 where none does. */
    public double powerW() {
        double[] conducting = conductingOhm();
        return conducting.length == 0 || ratedV <= 0
                ? 0
                : Heat.powerOfResistance(Heat.parallelResistance(conducting), ratedV);
    }

    /** How many are open. */
    public int openCount() {
        return (int) states.stream().filter(ElementState::open).count();
    }
}
