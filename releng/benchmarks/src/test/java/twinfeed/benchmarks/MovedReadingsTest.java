// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Readings;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Rejudging;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.units.Quantity;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;

/**
 * Where one reading moves, running only the calculators that say they read it gives the same answers, to the last bit, as running all: no
 * calculator reads more than it says.
 */
class MovedReadingsTest {
    private static final Runner RUNNER = new Runner(calculators(), (mean, spread, month, southern) -> mean);

    private static final Set<String> KEYS = RUNNER.calculators().stream()
            .flatMap(calculator -> calculator.descriptor().checks().stream())
            .map(Check::key)
            .collect(Collectors.toUnmodifiableSet());

    private static List<Calculator> calculators() {
        List<Calculator> found = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(found::add);
        return found;
    }

    /** A reading of a survey with its path. */
    private record Reading(EObject owner, EStructuralFeature feature, String path) {
        Quantity value() {
            return (Quantity) owner.eGet(feature);
        }
    }

    private static List<Reading> readings(EObject owner, String path) {
        List<Reading> found = new ArrayList<>();
        for (EStructuralFeature feature : owner.eClass().getEAllStructuralFeatures()) {
            Object value = owner.eGet(feature);
            String here = path + "." + feature.getName();
            if (value instanceof Quantity) {
                found.add(new Reading(owner, feature, here));
            } else if (value instanceof List<?> list) {
                for (int i = 0; i < list.size(); i++) {
                    if (list.get(i) instanceof EObject element) {
                        found.addAll(readings(element, here + "[" + i + "]"));
                    }
                }
            } else if (value instanceof EObject child && !(child instanceof Heater)) {
                found.addAll(readings(child, here));
            }
        }
        return found;
    }

    private static List<String> answers(List<Finding> findings) {
        return findings.stream()
                .map(finding -> finding.check().key() + " " + finding.outcome() + " " + finding.figures())
                .toList();
    }

    /** How many readings were moved. */
    private static int compare(String house, Survey surveyed, Candidate candidate) {
        Survey survey = EcoreUtil.copy(surveyed);
        Rejudging rejudging = RUNNER.rejudging(survey, survey, candidate, grid -> grid, new Readings(survey), KEYS)
                .fromHere();
        List<Reading> readings = readings(survey, "survey");
        for (Reading reading : readings) {
            Quantity taken = reading.value();
            for (double factor : new double[] {0.9, 1.1}) {
                reading.owner.eSet(reading.feature, taken.withSi(taken.si() * factor));
                assertEquals(
                        answers(rejudging.all()),
                        answers(rejudging.moved(calculator -> calculator.reads(reading.path))),
                        () -> house + ": " + reading.path + " at " + factor + " of what was read");
            }
            reading.owner.eSet(reading.feature, taken);
        }
        return readings.size();
    }

    @Test
    void randomHousesAreJudgedAlike() {
        int moved = 0;
        for (long seed = 1; seed <= 20; seed++) {
            RandomHouse house = RandomHouse.of(seed);
            moved += compare("house " + seed, house.survey(), house.candidate());
        }
        assertTrue(moved > 300, "only " + moved + " readings were moved");
    }

    @ParameterizedTest
    @ValueSource(strings = {"alder-beck", "birch-syke", "hazel-ghyll", "rowan-brook", "willow-mere"})
    void demonstrationJobsAreJudgedAlike(String name) {
        Path demo = Path.of(System.getProperty("twinfeed.root", ""), "demo");
        TwinfeedService service = TwinfeedService.onClassPath();
        OpenedJob opened = service.open(demo.resolve(name + ".job"), null);
        List<OptionResult> options =
                service.quickAssess(opened, Locale.UK).assessed().options();
        Candidate last = options.get(options.size() - 1).candidate();
        assertTrue(compare(name, opened.job().getSurvey(), last) >= 5);
    }
}
