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
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Readings;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.calculator.cache.CheckMargin;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Rejudging;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.units.Quantity;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;

/**
 * Where one reading moves, running only the calculators that say they read it gives the same answers, to the last bit, as running all: no
 * calculator reads more than it says. So after an edit answers may be taken from a cache.
 */
class MovedReadingsTest {
    private static final Runner RUNNER = new Runner(calculators(), (mean, spread, month, southern) -> mean);

    private static final Set<String> KEYS = RUNNER.calculators().stream()
            .flatMap(calculator -> calculator.descriptor().checks().stream())
            .map(Check::key)
            .collect(Collectors.toUnmodifiableSet());

    private static final Object LEFT_OUT = "left out";

    /** Names of data that have to be there. */
    private static final Set<EAttribute> NAMES_DATA =
            Set.of(SurveyPackage.Literals.SURVEY__RULES, SurveyPackage.Literals.SURVEY__CLIMATE);

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

    /** How many readings were moved. */
    private static int compare(String house, Survey surveyed, Candidate candidate) {
        Survey survey = EcoreUtil.copy(surveyed);
        Rejudging rejudging = RUNNER.rejudging(
                        survey, survey, candidate, grid -> grid, new Readings(survey), KEYS, null)
                .fromHere();
        List<Reading> readings = readings(survey, "survey");
        for (Reading reading : readings) {
            Quantity taken = reading.value();
            for (double factor : new double[] {0.9, 1.1}) {
                reading.owner.eSet(reading.feature, taken.withSi(taken.si() * factor));
                assertEquals(
                        rejudging.all().stream().map(CheckMargin::of).toList(),
                        rejudging.moved(calculator -> new double[] {calculator.reads(reading.path) ? factor : 0}),
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
        assertTrue(compareEdits(name, opened.job().getSurvey(), last) >= 50);
    }

    /** How many edits were made of a house whose answers are kept: each value is changed and left out, each object left out, and each list has one more. */
    private static int compareEdits(String house, Survey surveyed, Candidate candidate) {
        Survey survey = EcoreUtil.copy(surveyed);
        AnswerCache cache = new AnswerCache();
        judged(survey, candidate, cache);
        List<EObject> objects = new ArrayList<>(List.of(survey));
        survey.eAllContents().forEachRemaining(objects::add);
        int edits = 0;
        for (EObject object : objects) {
            for (EAttribute attribute : object.eClass().getEAllAttributes()) {
                if (!attribute.isMany() && object.eIsSet(attribute) && !NAMES_DATA.contains(attribute)) {
                    Object taken = object.eGet(attribute);
                    for (Object other : others(taken)) {
                        set(object, attribute, other);
                        compare(survey, candidate, cache, house + ": " + attribute.getName() + " " + other);
                        edits++;
                    }
                    object.eSet(attribute, taken);
                }
            }
            for (EReference reference : object.eClass().getEAllContainments()) {
                compareObjects(object, reference, () -> {
                    compare(survey, candidate, cache, house + ": " + reference.getName());
                });
                edits++;
            }
        }
        return edits;
    }

    /** An object more of which nothing is known yet, and one less. */
    private static void compareObjects(EObject owner, EReference reference, Runnable compare) {
        Object taken = reference.isMany() ? List.copyOf((List<?>) owner.eGet(reference)) : owner.eGet(reference);
        EObject empty = EcoreUtil.create(reference.getEReferenceType());
        if (reference.isMany()) {
            List<EObject> more = new ArrayList<>();
            ((List<?>) taken).forEach(each -> more.add((EObject) each));
            more.add(empty);
            owner.eSet(reference, more);
        } else {
            owner.eSet(reference, empty);
        }
        compare.run();
        owner.eUnset(reference);
        compare.run();
        owner.eSet(reference, taken);
    }

    private static void compare(Survey survey, Candidate candidate, AnswerCache cache, String edit) {
        List<CheckMargin> fresh = judged(survey, candidate, null);
        List<CheckMargin> kept = judged(survey, candidate, cache);
        assertEquals(fresh.size(), kept.size(), edit);
        for (int i = 0; i < fresh.size(); i++) {
            assertEquals(fresh.get(i), kept.get(i), edit);
        }
    }

    private static void set(EObject object, EAttribute attribute, Object value) {
        if (value == LEFT_OUT) {
            object.eUnset(attribute);
        } else {
            object.eSet(attribute, value);
        }
    }

    private static List<Object> others(Object value) {
        if (value instanceof Quantity quantity) {
            return List.of(quantity.withSi(quantity.si() * 1.1), quantity.withSi(quantity.si() * 0.5), LEFT_OUT);
        }
        if (value instanceof Boolean said) {
            return List.of(!said, LEFT_OUT);
        }
        if (value instanceof Enum<?> literal) {
            List<Object> others =
                    new ArrayList<>(List.of(literal.getDeclaringClass().getEnumConstants()));
            others.remove(literal);
            return others;
        }
        return List.of(LEFT_OUT);
    }

    private static List<CheckMargin> judged(Survey survey, Candidate candidate, @Nullable AnswerCache cache) {
        return RUNNER.rejudging(survey, survey, candidate, grid -> grid, new Readings(survey), KEYS, cache)
                .fromHere()
                .moved(calculator -> new double[0]);
    }
}
