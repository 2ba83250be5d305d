// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.text.Words;
import twinfeed.diagnosis.visit.FaultLog;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.survey.FaultStep;
import twinfeed.model.survey.IsolationTick;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.model.survey.Symptom;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.OpenedJob;

/**
 * The search for the fault of one open job: answers and ticks go in, each with the person and the time, and the job sheet comes
 * out. It computes only while somebody looks. Answers can be undone; ticks cannot, for they are the record that it was safe.
 */
public final class FaultSearch {
    private final JobSession session;
    private final Threads threads;
    private final Recalculation<FaultResult> recalculation;
    private final ChangeNotifier asking = new ChangeNotifier();
    private final ChangeNotifier resulted = new ChangeNotifier();
    private boolean watched;
    private String by = "";
    private @Nullable FaultResult result;

    FaultSearch(JobSession session, Threads threads) {
        this.session = session;
        this.threads = threads;
        this.recalculation = new Recalculation<>(threads.display());
        session.edits().changed().listen(this::ask);
        session.resulted().listen(this::price);
    }

    /** Somebody looks, or looks away. */
    public void watch(boolean looks) {
        if (looks && !watched) {
            watched = true;
            ask();
            price();
        }
        watched = looks;
    }

    private void ask() {
        long asked = recalculation.next();
        if (watched) {
            OpenedJob copy = session.copy();
            recalculation.ask(asked, () -> session.services().faults(asked, copy), threads.quick(), this::deliver);
            asking.fire();
        }
    }

    /** The job was judged anew with all its heaters: now a repair can be compared with them. */
    private void price() {
        JobResult job = session.result();
        AssessedJob judged = job == null ? null : job.judged();
        JobServices.@Nullable Prices prices = session.services().prices(session.survey());
        if (watched && session.current() && prices != null && judged != null) {
            long asked = recalculation.revision();
            recalculation.ask(
                    asked, () -> session.services().faults(asked, judged, prices), threads.thorough(), this::deliver);
        }
    }

    private void deliver(FaultResult answer) {
        FaultResult known = result;
        // The sheet without prices may come behind the one with them, which it must not hide.
        if (known == null || known.revision() < answer.revision() || answer.priced()) {
            result = answer;
            resulted.fire();
        }
    }

    /** Fires when the sheet has become old. */
    public ChangeNotifier asking() {
        return asking;
    }

    /** Fires when there is a new sheet. */
    public ChangeNotifier resulted() {
        return resulted;
    }

    /** The newest sheet; null before the first. */
    public @Nullable FaultResult result() {
        return result;
    }

    /** Whether that sheet is the one for the survey as it is now. */
    public boolean current() {
        FaultResult known = result;
        return known != null && known.revision() == recalculation.revision();
    }

    /** Whether the safe isolation is complete, as the newest sheet has it. */
    public boolean coverMayComeOff() {
        FaultResult known = result;
        return known != null
                && known.sheet() != null
                && known.sheet().isolation().stream().allMatch(FaultSheet.Tick::done)
                && known.sheet().isolationNotice().isEmpty();
    }

    /** Whether there is a price book by which repair and replacement can be compared. */
    public boolean hasPrices() {
        return session.services().prices(session.survey()) != null;
    }

    /** Whether prices are still being worked out. */
    public boolean pricing() {
        FaultResult known = result;
        return hasPrices() && (known == null || !known.priced()) && !session.current();
    }

    /** Who answers and ticks: whoever was named last, else who takes the survey; may be empty. */
    public String by() {
        String surveyor = session.survey().getTakenBy();
        return by.isEmpty() && surveyor != null ? surveyor : by;
    }

    /** From now on this person answers and ticks. */
    public void by(String person) {
        by = person.strip();
    }

    /** What was recorded for a question. */
    public Optional<Symptom> recorded(String key) {
        return session.survey().getSymptoms().stream()
                .filter(each -> key.equals(each.getKey()))
                .findFirst();
    }

    /**
     * Records an answer as one edit.
     *
     * @param answer {@code yes}, {@code no} or {@code unknown}
     * @throws twinfeed.model.io.InputException if nobody is named, or the cover may not be off yet
     */
    public void answer(String key, String answer) {
        // Tried on a copy, so that the rules of the record decide, and what they make of it becomes one edit.
        Survey copy = EcoreUtil.copy(session.survey());
        log(copy).answer(key, answer);
        Symptom made = copy.getSymptoms().stream()
                .filter(each -> key.equals(each.getKey()))
                .findFirst()
                .orElseThrow();
        session.edits()
                .put(
                        session.survey(),
                        SurveyPackage.Literals.SURVEY__SYMPTOMS,
                        EcoreUtil.copy(made),
                        recorded(key).orElse(null));
    }

    /** Takes an answer back: it was not asked. */
    public void clear(String key) {
        recorded(key).ifPresent(session.edits()::remove);
    }

    /**
     * Ticks a step of the safe isolation. That cannot be undone, nor can any edit before it.
     *
     * @throws twinfeed.model.io.InputException if nobody is named, or a step before it is not ticked
     */
    public void tick(String step) {
        session.edits().keep(() -> log(session.survey()).tick(step));
    }

    private FaultLog log(Survey survey) {
        return new FaultLog(
                survey, session.file().toString(), by(), session.services().now());
    }

    /**
     * The unit has been put back, or a step was ticked by mistake: the isolation is to be done from its first step. What was
     * ticked stays on record among the steps taken. Cannot be undone.
     *
     * @throws twinfeed.model.io.InputException if nobody is named
     */
    public void beginIsolationAgain() {
        log(session.survey());
        @Nullable FaultFinding finding = session.survey().getFaultFinding();
        if (finding != null && !finding.getIsolation().isEmpty()) {
            session.edits().keep(() -> end(finding));
        }
    }

    private void end(FaultFinding finding) {
        List<IsolationTick> ticks = finding.getIsolation();
        IsolationTick first = ticks.get(0);
        IsolationTick last = ticks.get(ticks.size() - 1);
        FaultStep ended = SurveyFactory.eINSTANCE.createFaultStep();
        ended.setWhat(new Words(session.locale())
                .format(
                        "isolation.ended",
                        Map.of(
                                "count", String.valueOf(ticks.size()),
                                "by", String.valueOf(first.getBy()),
                                "from", String.valueOf(first.getAt()),
                                "to", String.valueOf(last.getAt()))));
        ended.setBy(by());
        ended.setAt(session.services().now());
        finding.getSteps().add(ended);
        ticks.clear();
    }
}
