// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.visit;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.Observation;
import twinfeed.diagnosis.data.ObservationStage;
import twinfeed.diagnosis.inference.Evidence;
import twinfeed.diagnosis.inference.SupplyState;
import twinfeed.diagnosis.isolation.IsolationRecord;
import twinfeed.diagnosis.isolation.IsolationTime;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.survey.IsolationTick;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.units.text.Texts;

/**
 * Enters answers and ticks of the safe isolation into a survey, each with the person and the time. A tick waits for the one
 * before it, and an answer from under the cover waits for all of them.
 */
public final class FaultLog {
    private static final Texts MESSAGES = new Texts(FaultLog.class, "messages");

    private final Survey survey;
    private final FaultData data;
    private final String file;
    private final String by;
    private final String at;

    /**
     * For one person at one time.
     *
     * @param survey the survey, which is changed
     * @param file what to call it in messages
     * @param by who ticks and answers
     * @param at when, as text
     * @throws InputException if person or time is blank
     */
    public FaultLog(Survey survey, String file, String by, String at) {
        this.survey = survey;
        this.data = FaultData.current();
        this.file = file;
        this.by = by.strip();
        this.at = at.strip();
        if (this.by.isEmpty() && this.at.isEmpty()) {
            throw wrong("by, at", "", "log.nothing");
        }
        if (this.by.isEmpty()) {
            throw wrong("by", "", "log.nobody");
        }
        if (this.at.isEmpty()) {
            throw wrong("at", "", "log.noTime");
        }
        if (!IsolationTime.isReal(this.at)) {
            throw wrong("at", at, "log.time");
        }
    }

    /**
     * Ticks a step of the isolation.
     *
     * @throws InputException if there is no such step, it is ticked already, or one before it is not
     */
    public void tick(String step) {
        IsolationRecord isolation = isolation();
        List<String> procedure = isolation.procedure();
        int place = procedure.indexOf(step);
        if (place < 0) {
            throw wrong("isolation.step", step, "log.step", String.join(", ", procedure));
        }
        if (!isolation.inOrder()) {
            throw wrong("isolation.step", step, "log.order");
        }
        List<IsolationRecord.Tick> ticks = isolation.ticks();
        if (ticks.get(place).done()) {
            throw wrong("isolation.step", step, "log.ticked");
        }
        for (IsolationRecord.Tick before : ticks.subList(0, place)) {
            boolean anyTime = step.equals(IsolationRecord.WATER)
                    || (before.step().equals(IsolationRecord.WATER) && IsolationRecord.COVER_ON.contains(step));
            if (!before.done() && !anyTime) {
                throw wrong("isolation.step", step, "log.before", before.step());
            }
        }
        IsolationTick tick = SurveyFactory.eINSTANCE.createIsolationTick();
        tick.setStep(step);
        tick.setBy(by);
        tick.setAt(at);
        finding().getIsolation().add(tick);
    }

    /** As the survey stands now: a scorched isolator makes the procedure longer. */
    private IsolationRecord isolation() {
        return Evidence.of(survey, CatalogueFactory.eINSTANCE.createHeater(), SupplyState.UNKNOWN, data)
                .isolation();
    }

    private FaultFinding finding() {
        if (survey.getFaultFinding() == null) {
            survey.setFaultFinding(SurveyFactory.eINSTANCE.createFaultFinding());
        }
        return survey.getFaultFinding();
    }

    /**
     * Enters an answer; one that was given before is replaced, its note kept.
     *
     * @param key key of the observation
     * @param answer {@code yes}, {@code no} or {@code unknown}
     * @throws InputException if the observation or the answer is unknown, or the cover may not be off yet
     */
    public void answer(String key, String answer) {
        Observation observation = data.observation(key)
                .filter(each -> each.place() != ObservationStage.FEED)
                .orElseThrow(() -> wrong("symptoms.key", key, "log.observation", known()));
        FaultAnswer value = FaultAnswer.get(answer.toLowerCase(Locale.ROOT));
        if (value == null) {
            throw wrong("symptoms.answer", answer, "log.answer", key);
        }
        IsolationRecord isolation = isolation();
        if (observation.place() == ObservationStage.COVER && value != FaultAnswer.UNKNOWN && !isolation.complete()) {
            throw wrong("symptoms.key", key, "log.cover", String.join(", ", isolation.open()));
        }
        Symptom symptom = symptom(key);
        symptom.setAnswer(value);
        symptom.setBy(by);
        symptom.setAt(at);
    }

    /** Enters all of it: ticks in the order given, then answers. */
    public void enter(List<String> ticks, Map<String, String> answers) {
        ticks.forEach(this::tick);
        answers.forEach(this::answer);
    }

    private Symptom symptom(String key) {
        return survey.getSymptoms().stream()
                .filter(each -> key.equals(each.getKey()))
                .findFirst()
                .orElseGet(() -> {
                    Symptom made = SurveyFactory.eINSTANCE.createSymptom();
                    made.setKey(key);
                    survey.getSymptoms().add(made);
                    return made;
                });
    }

    private String known() {
        return String.join(
                ", ",
                data.observations().values().stream()
                        .filter(each -> each.place() != ObservationStage.FEED)
                        .map(Observation::key)
                        .toList());
    }

    private InputException wrong(String element, String reading, String key, Object... arguments) {
        return new InputException(new InputProblem(
                file,
                0,
                "survey." + element,
                reading,
                MESSAGES.toReader(key + ".wrong", arguments),
                MESSAGES.toReader(key + ".right", arguments)));
    }
}
