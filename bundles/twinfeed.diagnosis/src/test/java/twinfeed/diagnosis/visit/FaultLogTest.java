// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.PricedVisits;
import twinfeed.diagnosis.isolation.IsolationRecord;
import twinfeed.model.io.InputException;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.IsolationTick;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.Symptom;

/** Ticks and answers are entered with person and time; nothing from under the cover before the unit is proved dead. */
class FaultLogTest {
    private final Survey survey = PricedVisits.survey();
    private final FaultLog log = new FaultLog(survey, "invented.twinfeed", " Invented engineer ", " 2026-10-06 09:45 ");

    private static String refused(Runnable entry) {
        return assertThrows(InputException.class, entry::run).getMessage();
    }

    private static void contains(String text, String part) {
        assertTrue(text.contains(part), text);
    }

    @Test
    void everyTickNamesPersonAndTime() {
        log.enter(IsolationRecord.PROCEDURE, Map.of());
        List<IsolationTick> ticks = survey.getFaultFinding().getIsolation();
        assertEquals(
                IsolationRecord.PROCEDURE,
                ticks.stream().map(IsolationTick::getStep).toList());
        assertTrue(ticks.stream()
                .allMatch(each ->
                        each.getBy().equals("Invented engineer") && each.getAt().equals("2026-10-06 09:45")));
        contains(refused(() -> log.tick("noticeUp")), "it is ticked already");
    }

    @Test
    void aTickWaitsForTheOneBeforeIt() {
        String message = refused(() -> log.tick("noticeUp"));
        contains(message, "survey.isolation.step");
        contains(message, "\"noticeUp\"");
        contains(message, "showerOff comes before it");
        log.tick("showerOff");
        contains(refused(() -> log.tick("noticeUp")), "breakerLocked comes before it");
        contains(refused(() -> log.tick("prayer")), "name one of showerOff, breakerLocked, noticeUp");
    }

    /** The water may be shut at any time before the cover comes off. */
    @Test
    void theWaterIsShutAtAnyTimeBeforeTheCoverIsOff() {
        log.tick("waterShut");
        log.enter(List.of("showerOff", "breakerLocked", "noticeUp", "isolatorOpen", "testerProvedBefore"), Map.of());
        Survey late = PricedVisits.survey();
        FaultLog other = new FaultLog(late, "invented.twinfeed", "Invented engineer", "09:45");
        other.enter(List.of("showerOff", "breakerLocked", "noticeUp", "isolatorOpen"), Map.of());
        contains(refused(() -> other.tick("testerProvedBefore")), "waterShut comes before it");
        other.enter(List.of("waterShut", "testerProvedBefore"), Map.of());
        assertEquals(6, late.getFaultFinding().getIsolation().size());
    }

    @Test
    void ticksInDisorderHaveToBeTakenOut() {
        log.enter(List.of("showerOff", "breakerLocked"), Map.of());
        survey.getFaultFinding().getIsolation().move(0, 1);
        contains(refused(() -> log.tick("noticeUp")), "not in the order of the procedure");
    }

    /** A hot isolator is proved dead on its supply side before it is handled. */
    @Test
    void aHotIsolatorMakesTheProcedureLonger() {
        log.answer("isolatorHot", "yes");
        log.enter(List.of("showerOff", "breakerLocked", "noticeUp"), Map.of());
        contains(refused(() -> log.tick("isolatorOpen")), "isolatorSupplyDead comes before it");
        log.tick("isolatorSupplyDead");
        log.tick("isolatorOpen");
    }

    @Test
    void anAnswerIsEnteredAndReplacedAndItsNoteKept() {
        log.answer("someHeatButWeak", "YES");
        Symptom symptom = survey.getSymptoms().get(0);
        symptom.setNote("since Sunday");
        assertEquals("someHeatButWeak", symptom.getKey());
        assertEquals(FaultAnswer.YES, symptom.getAnswer());
        assertEquals("Invented engineer", symptom.getBy());
        assertEquals("2026-10-06 09:45", symptom.getAt());
        log.answer("kettling", "unknown");
        new FaultLog(survey, "invented.twinfeed", "Another engineer", "10:15").answer("someHeatButWeak", "no");
        assertEquals(2, survey.getSymptoms().size());
        assertEquals(FaultAnswer.NO, symptom.getAnswer());
        assertEquals("Another engineer", symptom.getBy());
        assertEquals("10:15", symptom.getAt());
        assertEquals("since Sunday", symptom.getNote());
        assertEquals("kettling", survey.getSymptoms().get(1).getKey());
    }

    @Test
    void anAnswerFromUnderTheCoverWaitsForTheIsolation() {
        String message = refused(() -> log.answer("cutOutOpen", "no"));
        contains(message, "it is found under the cover");
        contains(message, "do and tick showerOff, breakerLocked");
        assertTrue(survey.getSymptoms().isEmpty());
        log.answer("cutOutOpen", "unknown");
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("cutOutOpen", "no");
        answers.put("switchOpen", "yes");
        log.enter(IsolationRecord.PROCEDURE, answers);
        assertEquals(
                List.of(FaultAnswer.NO, FaultAnswer.YES),
                survey.getSymptoms().stream().map(Symptom::getAnswer).toList());
    }

    /** What the calculators find of the supplies is nobody's answer. */
    @Test
    void onlyQuestionsAreAnswered() {
        String message = refused(() -> log.answer("feedMarginFails", "yes"));
        contains(message, "there is no such observation; name one of onlyTheHeatFails, noWaterSupplyGood");
        assertFalse(message.contains(", feedMarginFails"), message);
        contains(refused(() -> log.answer("singsAtNight", "yes")), "there is no such observation");
        contains(refused(() -> log.answer("kettling", "maybe")), "it is no answer to kettling");
    }

    @Test
    void personAndTimeAreNeeded() {
        contains(
                refused(() -> new FaultLog(survey, "f", " ", "")),
                "f, survey.by, at: nobody and no time is named; say who did it and when, for example 2026-10-06 09:45");
        contains(
                refused(() -> new FaultLog(survey, "f", " ", "09:45")),
                "f, survey.by: nobody is named; say who did it");
        contains(
                refused(() -> new FaultLog(survey, "f", "Invented engineer", " ")),
                "f, survey.at: no time is named; say when it was done, for example 2026-10-06 09:45");
        contains(refused(() -> new FaultLog(survey, "f", "Invented engineer", "soon")), "it is no real time");
        assertNull(survey.getFaultFinding());
    }

    /** Told, then seen from outside, then under the cover; nothing that is computed. */
    @Test
    void theQuestionsInTheOrderOfSafety() {
        List<FaultQuestion> all = FaultQuestion.all(Locale.ENGLISH);
        assertEquals(
                new FaultQuestion(
                        "onlyTheHeatFails",
                        "Does the water run as usual but come out cold or lukewarm?",
                        "told",
                        "ask",
                        1),
                all.get(0));
        assertEquals(
                List.of("told", "outside", "cover"),
                all.stream().map(FaultQuestion::place).distinct().toList());
        assertTrue(
                all.stream().allMatch(each -> each.opensCover() == each.place().equals("cover")));
        FaultQuestion last = all.get(all.size() - 1);
        assertEquals("dead test, cover off", last.how());
        assertTrue(FaultQuestion.all(Locale.GERMAN).get(0).text().startsWith("Läuft das Wasser wie gewohnt"));
    }
}
