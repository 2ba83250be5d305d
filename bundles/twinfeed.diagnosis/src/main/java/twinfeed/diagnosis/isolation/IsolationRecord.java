// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.isolation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.survey.IsolationTick;

/**
 * The record of the safe isolation: every step ticked by a named person at a stated time, in the order of the procedure. It has two
 * stages: with the cover on the supplies are shut off, with the cover off and before anything is touched the unit is proved dead.
 * One switch is never proof, and a tester that fails between its two proofs would call a live conductor dead.
 *
 * @param ticks the ticks by the order of the procedure; a step without a tick has neither person nor time
 * @param inOrder whether the ticks were made in the order of the procedure
 * @param superseded whether there are ticks of the earlier procedure, which proved dead before the cover came off and does not count
 */
public record IsolationRecord(List<Tick> ticks, boolean inOrder, boolean superseded) {
    /** Step that may be done at any time before the cover comes off. */
    public static final String WATER = "waterShut";

    /** Step that comes before the isolator is handled where the isolator itself is under suspicion. */
    public static final String ISOLATOR_SUPPLY = "isolatorSupplyDead";

    /** Steps with the cover on (common practice). */
    public static final List<String> COVER_ON =
            List.of("showerOff", "breakerLocked", "noticeUp", "isolatorOpen", WATER);

    /** Steps with the cover off, before anything is touched (common practice). */
    public static final List<String> COVER_OFF = List.of("testerProvedBefore", "deadAtTerminals", "testerProvedAfter");

    /** The whole procedure. */
    public static final List<String> PROCEDURE = both(COVER_ON);

    /** The whole procedure where the isolator is hot, scorched or crackling: its supply side is proved dead before it is handled. */
    public static final List<String> ISOLATOR_SUSPECTED =
            both(List.of("showerOff", "breakerLocked", "noticeUp", ISOLATOR_SUPPLY, "isolatorOpen", WATER));

    /** Putting it back on, in its order (common practice). */
    public static final List<String> SWITCHING_ON = List.of(
            "insulationTested",
            "coverOn",
            "waterOn",
            "nobodyAtShower",
            "isolatorClosed",
            "breakerClosed",
            "rcdTested",
            "outletMeasured");

    /** Steps of the earlier procedure, in which proving dead came before the cover was off. */
    private static final Set<String> EARLIER = Set.of("testerProved", "provedDead", "testerProvedAgain");

    /**
     * One step.
     *
     * @param step its key
     * @param by who did it, empty if it is not ticked
     * @param at when, empty if it is not ticked
     */
    public record Tick(String step, String by, String at) {
        /** Whether it was done, by somebody, at a real time. */
        public boolean done() {
            return !by.isEmpty() && IsolationTime.isReal(at);
        }
    }

    public IsolationRecord {
        ticks = List.copyOf(ticks);
    }

    private static List<String> both(List<String> coverOn) {
        List<String> all = new ArrayList<>(coverOn);
        all.addAll(COVER_OFF);
        return List.copyOf(all);
    }

    /**
     * The record of a survey.
     *
     * @param finding what was done; absent if nothing was
     * @param isolatorSuspected whether the local isolator is hot, scorched or crackling
     */
    public static IsolationRecord of(@Nullable FaultFinding finding, boolean isolatorSuspected) {
        List<String> procedure = isolatorSuspected ? ISOLATOR_SUSPECTED : PROCEDURE;
        List<IsolationTick> made = finding == null ? List.of() : finding.getIsolation();
        List<Tick> ticks = procedure.stream().map(step -> tick(step, made)).toList();
        List<Integer> places = new ArrayList<>();
        made.stream()
                .map(IsolationTick::getStep)
                .filter(step -> procedure.contains(step) && !WATER.equals(step))
                .forEach(step -> places.add(procedure.indexOf(step)));
        return new IsolationRecord(
                ticks,
                places.equals(places.stream().sorted().toList()),
                made.stream().anyMatch(each -> each.getStep() != null && EARLIER.contains(each.getStep())));
    }

    private static Tick tick(String step, List<IsolationTick> made) {
        return made.stream()
                .filter(each -> step.equals(each.getStep()))
                .findFirst()
                .map(each -> new Tick(step, text(each.getBy()), text(each.getAt())))
                .orElseGet(() -> new Tick(step, "", ""));
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text.strip();
    }

    /** The steps that this record asks for, in order. */
    public List<String> procedure() {
        return ticks.stream().map(Tick::step).toList();
    }

    /** Whether the cover may come off: the stage with the cover on is done. Nothing may be touched yet. */
    public boolean coverMayComeOff() {
        return inOrder
                && ticks.stream()
                        .filter(tick -> !COVER_OFF.contains(tick.step()))
                        .allMatch(Tick::done);
    }

    /** Whether both stages are done, so that parts may be touched and measured. */
    public boolean complete() {
        return inOrder && ticks.stream().allMatch(Tick::done);
    }

    /** Whether any step was ticked: then the unit is, or may be, isolated. */
    public boolean begun() {
        return superseded || ticks.stream().anyMatch(Tick::done);
    }

    /** The steps that are still to be ticked; all of them if they were done out of order. */
    public List<String> open() {
        return ticks.stream()
                .filter(tick -> !inOrder || !tick.done())
                .map(Tick::step)
                .toList();
    }
}
