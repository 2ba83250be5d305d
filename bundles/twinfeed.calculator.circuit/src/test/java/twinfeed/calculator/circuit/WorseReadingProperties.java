// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.calculator.Finding;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.Survey;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.units.Length;
import twinfeed.units.Power;
import twinfeed.units.Resistance;
import twinfeed.units.Temperature;

/** In random houses a worse reading never turns a deciding check from failing to passing. */
class WorseReadingProperties {
    private static final String[] SIZES = {"4 mm2", "6 mm2", "10 mm2", "16 mm2"};
    private static final String[] METHODS = {"100", "101", "102", "103", "C", "A"};
    private static final int[] RATINGS = {32, 40, 45, 50};
    private static final String[] KINDS = {"breaker-b", "breaker-c", "fuse-3036", "fuse-88-3", "breaker-3871-2"};

    private static Survey survey(int size, int method, int rating, int kind, double lengthM, boolean residual) {
        Survey survey = Surveys.suitable();
        Circuit circuit = survey.getElectricity().getCircuit();
        circuit.getSegments().forEach(segment -> segment.setSize(Area.valueOf(SIZES[size])));
        circuit.getSegments().get(0).setMethod(METHODS[method]);
        circuit.getSegments().get(0).setLength(Length.ofSi(lengthM));
        circuit.getDevice().setRating(Current.ofSi(RATINGS[rating]));
        circuit.getDevice().setKind(KINDS[kind]);
        circuit.getDevice().setLetThrough(null);
        circuit.getRcd().setKind(residual ? RcdKind.RCCB : RcdKind.NONE);
        return survey;
    }

    @Property(tries = 150)
    void worseIsNeverBetter(
            @ForAll @IntRange(max = 3) int size,
            @ForAll @IntRange(max = 5) int method,
            @ForAll @IntRange(max = 3) int rating,
            @ForAll @IntRange(max = 4) int kind,
            @ForAll @DoubleRange(min = 1, max = 60) double lengthM,
            @ForAll @DoubleRange(min = 0.05, max = 1.2) double externalOhm,
            @ForAll @DoubleRange(min = 1.05, max = 1.8) double worse,
            @ForAll boolean residual) {
        Survey before = survey(size, method, rating, kind, lengthM, residual);
        before.getElectricity().setExternalLoop(Resistance.ofSi(externalOhm));
        CableSegment first = before.getElectricity().getCircuit().getSegments().get(0);
        first.setAmbient(Temperature.ofSi(30));
        first.setGrouped(1);
        Heater heater = Surveys.heater("8.5 kW", "240 V");
        check(before, heater, copy -> segment(copy).setLength(Length.ofSi(lengthM * worse)), heater, "longer cable");
        check(before, heater, copy -> segment(copy).setAmbient(Temperature.ofSi(30 * worse)), heater, "warmer ambient");
        check(before, heater, copy -> segment(copy).setGrouped(1 + (int) (worse * 3)), heater, "more grouping");
        check(
                before,
                heater,
                copy -> copy.getElectricity().setExternalLoop(Resistance.ofSi(externalOhm * worse)),
                heater,
                "larger Ze");
        Heater stronger = Surveys.heater("8.5 kW", "240 V");
        stronger.setPower(Power.ofSi(8500 * worse));
        check(before, heater, copy -> {}, stronger, "larger load");
    }

    private static CableSegment segment(Survey copy) {
        return copy.getElectricity().getCircuit().getSegments().get(0);
    }

    private static void check(Survey before, Heater heater, Consumer<Survey> change, Heater after, String what) {
        Survey worse = EcoreUtil.copy(before);
        change.accept(worse);
        List<Finding> good = Surveys.findings(before, heater);
        List<Finding> bad = Surveys.findings(worse, after);
        for (int at = 0; at < good.size(); at++) {
            Finding one = good.get(at);
            // A smaller fault current is kinder to the protective conductor: there physics lets a larger loop be
            // better.
            boolean kinder = one.check().key().equals("circuit.protectiveConductor");
            boolean better = !kinder
                    && one.rulesOut()
                    && (bad.get(at).outcome() == Outcome.PASSES || bad.get(at).outcome() == Outcome.NOT_APPLICABLE);
            assertTrue(!better, () -> what + " betters " + one.check().key());
        }
    }
}
