// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.model.check.ModelPath;
import twinfeed.model.io.InputProblem;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.IsolationTick;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyPackage.Literals;
import twinfeed.model.survey.Symptom;
import twinfeed.usecase.refusal.Refusals;

/**
 * Words of a survey that are keys of the calculators' data: symptoms, steps of the isolation, fittings, protective devices, cables, reference methods. A misspelt one
 * would be passed over in silence: a symptom that nobody asks for, a breaker without a limit.
 */
final class KnownWords {
    private static final String FITTING = "fitting.";

    /** Steps of the isolation that earlier files tick; they are read and do not count. */
    private static final List<String> EARLIER_STEPS = List.of("testerProved", "provedDead", "testerProvedAgain");

    private final String file;
    private final List<InputProblem> problems;
    private final Collection<String> symptoms;
    private final Collection<String> fittings;
    private final Collection<String> steps;

    /**
     * With what the calculators know.
     *
     * @param file what messages call the job
     * @param calculators those that take part
     * @param problems takes what is wrong
     */
    KnownWords(String file, Collection<? extends Calculator> calculators, List<InputProblem> problems) {
        this.file = file;
        this.problems = problems;
        this.symptoms = keys(calculators, "question.");
        this.fittings = keys(calculators, FITTING);
        this.steps = keys(calculators, "isolation.");
    }

    /** What follows a prefix in the keys of the calculators' texts. */
    private static Collection<String> keys(Collection<? extends Calculator> calculators, String prefix) {
        Collection<String> keys = new TreeSet<>();
        for (Calculator calculator : calculators) {
            calculator
                    .descriptor()
                    .texts()
                    .keys()
                    .subSet(prefix, prefix + Character.MAX_VALUE)
                    .forEach(key -> keys.add(key.substring(prefix.length())));
        }
        return keys;
    }

    /** Looks at every word; where nobody knows a list, for its calculator is not there, all words of it pass. */
    void check(Survey survey) {
        Optional<RuleSet> rules =
                survey.getRules() == null ? Optional.of(RuleSets.standard()) : RuleSets.find(survey.getRules());
        for (Iterator<EObject> all = EcoreUtil.getAllProperContents(survey, false); all.hasNext(); ) {
            EObject object = all.next();
            if (object instanceof Symptom symptom) {
                check(symptom, Literals.SYMPTOM__KEY, symptom.getKey(), symptoms);
            } else if (object instanceof Fitting fitting && fitting.getK() == null) {
                check(fitting, Literals.FITTING__KIND, fitting.getKind(), fittings);
            } else if (object instanceof ProtectiveDevice device && rules.isPresent()) {
                check(
                        device,
                        Literals.PROTECTIVE_DEVICE__KIND,
                        device.getKind(),
                        rules.get().devices().keys());
            } else if (object instanceof CableSegment segment && rules.isPresent()) {
                check(
                        segment,
                        Literals.CABLE_SEGMENT__METHOD,
                        segment.getMethod(),
                        rules.get().methods());
                check(
                        segment,
                        Literals.CABLE_SEGMENT__CABLE,
                        segment.getCable(),
                        rules.get().cables().keys());
            } else if (object instanceof IsolationTick tick
                    && !EARLIER_STEPS.contains(String.valueOf(tick.getStep()))) {
                check(tick, Literals.ISOLATION_TICK__STEP, tick.getStep(), steps);
            }
        }
    }

    private void check(EObject object, EStructuralFeature feature, @Nullable String word, Collection<String> known) {
        if (word == null || known.isEmpty() || known.contains(word)) {
            return;
        }
        problems.add(new InputProblem(
                file,
                0,
                ModelPath.of(object, feature),
                word,
                Refusals.wrong("word"),
                Refusals.oneOf("word", word, known)));
    }
}
