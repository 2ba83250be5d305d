// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Readings;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Survey;

/** All calculators prepared for one survey. */
final class Session {
    /**
     * One calculator that was prepared.
     *
     * @param source the file that it came in
     * @param assessor what judges the candidates; absent where preparing failed
     * @param failure why it cannot judge; absent where it can
     * @param survey the copy that it was given; absent where it shares the caller's
     */
    record Prepared(
            CalculatorDescriptor descriptor,
            String source,
            @Nullable Assessor assessor,
            @Nullable String failure,
            @Nullable Survey survey) {}

    private final RuleSet rules;
    private final Grid grid;
    private final Readings readings;
    private final Survey survey;
    private final List<Prepared> prepared;
    private final Containment.@Nullable Steps contained;
    private final @Nullable Set<String> asked;

    /**
     * A session.
     *
     * @param contained runs the calculators; absent for draws by the thousand, which are only made of calculators that have
     *     answered before
     * @param asked the checks of which alone outcomes and figures are wanted; absent where all is wanted
     */
    Session(
            RuleSet rules,
            Grid grid,
            Readings readings,
            Survey survey,
            List<Prepared> prepared,
            Containment.@Nullable Steps contained,
            @Nullable Set<String> asked) {
        this.rules = rules;
        this.grid = grid;
        this.readings = readings;
        this.survey = survey;
        this.prepared = List.copyOf(prepared);
        this.contained = contained;
        this.asked = asked;
    }

    RuleSet rules() {
        return rules;
    }

    Grid grid() {
        return grid;
    }

    /** Those that changed the survey that they were given, by id: what they said is of another house. */
    List<String> changing() {
        return prepared.stream()
                .filter(each -> each.survey != null && !EcoreUtil.equals(survey, each.survey))
                .map(each -> each.descriptor.id())
                .toList();
    }

    OptionResult judge(Candidate candidate) {
        return OptionResult.of(candidate, findings(candidate, new SharedQuantities(grid)));
    }

    /**
     * What all calculators say of a heater.
     *
     * @param shared where they hand quantities to one another; none yet
     */
    List<Finding> findings(Candidate candidate, SharedQuantities shared) {
        List<Finding> all = new ArrayList<>();
        for (int i = 0; i < prepared.size(); i++) {
            all.addAll(answers(i, candidate, shared));
        }
        return all;
    }

    /**
     * What one calculator says. What it said before it broke stays, and each check that it declared has an answer.
     *
     * @param number its place among those prepared
     * @param shared what those before it gave
     */
    List<Finding> answers(int number, Candidate candidate, SharedQuantities shared) {
        Prepared each = prepared.get(number);
        Findings findings = empty(each, candidate);
        String broken = each.failure;
        if (each.assessor != null) {
            broken = run(each.descriptor.id(), each.assessor, candidate, shared, findings);
        }
        if (broken != null) {
            report(each, findings, broken);
        }
        if (asked == null) {
            addUnanswered(each, findings);
        }
        return findings.list();
    }

    private Findings empty(Prepared each, Candidate candidate) {
        return asked == null
                ? new Findings(each.descriptor.id(), readings, candidate)
                : Findings.figuresOnly(each.descriptor.id(), readings, candidate, asked);
    }

    /** Has a calculator answer; what is left to say is why it broke, if it did. */
    private @Nullable String run(
            String calculator, Assessor assessor, Candidate candidate, SharedQuantities shared, Findings findings) {
        try {
            if (contained == null) {
                assessor.assess(candidate, shared, findings);
            } else {
                contained.run(calculator, () -> assessor.assess(candidate, shared, findings));
            }
        } catch (Throwable e) {
            if (!Containment.containable(e)) {
                throw e;
            }
            return Containment.reason(e);
        }
        return null;
    }

    private static void report(Prepared each, Findings findings, String reason) {
        findings.on(Runner.BROKEN)
                .outcome(Outcome.CANNOT_TELL)
                .argument("calculator", each.descriptor.id())
                .argument("source", each.source)
                .argument("reason", reason)
                .add();
    }

    /** A check that was declared and not answered is neither good nor bad. */
    private static void addUnanswered(Prepared each, Findings findings) {
        List<Check> declared = each.descriptor.checks();
        List<Finding> given = findings.list();
        for (int i = 0; i < declared.size(); i++) {
            String key = declared.get(i).key();
            boolean inPlace = i < given.size() && given.get(i).check().key().equals(key);
            if (!inPlace
                    && given.stream().noneMatch(finding -> finding.check().key().equals(key))) {
                findings.on(declared.get(i))
                        .outcome(Outcome.NOT_CHECKED)
                        .argument("calculator", each.descriptor.id())
                        .argument("source", each.source)
                        .add();
            }
        }
    }
}
