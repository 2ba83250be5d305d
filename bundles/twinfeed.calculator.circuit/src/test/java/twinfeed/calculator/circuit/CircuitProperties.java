// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.Survey;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.units.Length;

/** What holds for every circuit, whatever its numbers. */
class CircuitProperties {
    private static final String[] SIZES = {"4 mm2", "6 mm2", "10 mm2", "16 mm2"};
    private static final String[] METHODS = {"100", "101", "102", "103", "C", "A"};
    private static final int[] RATINGS = {32, 40, 45, 50};
    private static final String[] POWERS = {"7.2 kW", "8.5 kW", "9.5 kW", "10.5 kW", "11.5 kW"};

    private static Survey survey(int size, int method, int rating, double lengthM, boolean residual) {
        Survey survey = Surveys.suitable();
        Circuit circuit = survey.getElectricity().getCircuit();
        circuit.getSegments().get(0).setSize(Area.valueOf(SIZES[size]));
        circuit.getSegments().get(1).setSize(Area.valueOf(SIZES[size]));
        circuit.getSegments().get(0).setMethod(METHODS[method]);
        circuit.getSegments().get(0).setLength(Length.ofSi(lengthM));
        circuit.getDevice().setRating(Current.ofSi(RATINGS[rating]));
        circuit.getRcd().setKind(residual ? RcdKind.RCCB : RcdKind.NONE);
        return survey;
    }

    private static double margin(Finding finding) {
        Finding.Figures figures = finding.printed();
        return figures == null ? Double.NEGATIVE_INFINITY : figures.margin();
    }

    @Property(tries = 300)
    void aWorkNeverWorsensTheCheckThatItIsOfferedFor(
            @ForAll @IntRange(max = 3) int size,
            @ForAll @IntRange(max = 5) int method,
            @ForAll @IntRange(max = 3) int rating,
            @ForAll @IntRange(max = 4) int power,
            @ForAll @DoubleRange(min = 0, max = 90) double lengthM,
            @ForAll boolean residual) {
        Survey survey = survey(size, method, rating, lengthM, residual);
        Heater heater = Surveys.heater(POWERS[power], "240 V");
        for (Finding finding : Surveys.findings(survey, heater)) {
            for (Remedy remedy : finding.remedies()) {
                Survey copy = EcoreUtil.copy(survey);
                remedy.edit().accept(copy);
                Finding after = Surveys.finding(copy, heater, finding.check().key());
                boolean better = after.outcome() != Outcome.FAILS || margin(after) >= margin(finding) - 1e-9;
                assertTrue(better, () -> remedy.id() + " for " + finding.check().key());
            }
        }
    }

    @Property(tries = 300)
    void nothingBreaksAndIdsAreUnique(
            @ForAll @IntRange(max = 3) int size,
            @ForAll @IntRange(max = 5) int method,
            @ForAll @IntRange(max = 3) int rating,
            @ForAll @IntRange(max = 4) int power,
            @ForAll @DoubleRange(min = 0, max = 500) double lengthM,
            @ForAll boolean residual) {
        Survey survey = survey(size, method, rating, lengthM, residual);
        for (Finding finding : Surveys.findings(survey, Surveys.heater(POWERS[power], "240 V"))) {
            assertFalse(finding.check().equals(Runner.BROKEN));
            Set<String> ids = new HashSet<>();
            finding.remedies().forEach(remedy -> assertTrue(ids.add(remedy.id()), remedy.id()));
        }
    }

    @Property(tries = 200)
    void aLongerCableDropsMoreAndDeliversLess(
            @ForAll @IntRange(max = 3) int size,
            @ForAll @DoubleRange(min = 1, max = 60) double lengthM,
            @ForAll @DoubleRange(min = 0.1, max = 30) double moreM) {
        Heater heater = Surveys.heater("9.5 kW", "240 V");
        Survey shorter = survey(size, 4, 1, lengthM, true);
        Survey longer = survey(size, 4, 1, lengthM + moreM, true);
        String drop = "circuit.voltageDrop";
        String power = "circuit.deliveredPower";
        String loop = "circuit.loopImpedance";
        assertTrue(value(longer, heater, drop) > value(shorter, heater, drop));
        assertTrue(value(longer, heater, power) < value(shorter, heater, power));
        assertTrue(value(longer, heater, loop) > value(shorter, heater, loop));
    }

    @Property(tries = 100)
    void aThickerCableIsNeverWorse(
            @ForAll @IntRange(max = 2) int size,
            @ForAll @IntRange(max = 5) int method,
            @ForAll @DoubleRange(min = 1, max = 60) double lengthM) {
        Heater heater = Surveys.heater("9.5 kW", "240 V");
        Survey thin = survey(size, method, 1, lengthM, true);
        Survey thick = survey(size + 1, method, 1, lengthM, true);
        assertTrue(value(thick, heater, "circuit.capacity") > value(thin, heater, "circuit.capacity"));
        assertTrue(value(thick, heater, "circuit.voltageDrop") < value(thin, heater, "circuit.voltageDrop"));
        assertTrue(value(thick, heater, "circuit.deliveredPower") > value(thin, heater, "circuit.deliveredPower"));
    }

    private static double value(Survey survey, Heater heater, String key) {
        return Fixtures.value(Surveys.finding(survey, heater, key));
    }
}
