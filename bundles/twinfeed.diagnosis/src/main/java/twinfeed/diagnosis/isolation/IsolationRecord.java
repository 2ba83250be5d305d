// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.isolation;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.survey.IsolationTick;

/**
 * The record of the safe isolation: every step ticked by a named person at a stated time, in the order of the procedure. One
 * switch is never proof, and a tester that fails between its two proofs would call a live conductor dead.
 *
 * @param ticks the ticks by the order of the procedure; a step without a tick has neither person nor time
 * @param inOrder whether the ticks were made in the order of the procedure
 */
public record IsolationRecord(List<Tick> ticks, boolean inOrder) {
    /** The procedure (common practice). */
    public static final List<String> PROCEDURE =
            List.of("isolatorOpen", "breakerLocked", "testerProved", "provedDead", "testerProvedAgain", "waterShut");

    /**
     * One step.
     *
     * @param step its key
     * @param by who did it, empty if it is not ticked
     * @param at when, empty if it is not ticked
     */
    public record Tick(String step, String by, String at) {
        /** Whether it was done, by somebody, at some time. */
        public boolean done() {
            return !by.isEmpty() && !at.isEmpty();
        }
    }

    public IsolationRecord {
        ticks = List.copyOf(ticks);
    }

    /** The record of a survey. */
    public static IsolationRecord of(@Nullable FaultFinding finding) {
        List<IsolationTick> made = finding == null ? List.of() : finding.getIsolation();
        List<Tick> ticks = PROCEDURE.stream().map(step -> tick(step, made)).toList();
        List<Integer> places = new ArrayList<>();
        // The water may be shut at any time before the cover comes off; the electrical steps have their order.
        made.stream()
                .map(IsolationTick::getStep)
                .filter(step -> PROCEDURE.contains(step) && !"waterShut".equals(step))
                .forEach(step -> places.add(PROCEDURE.indexOf(step)));
        return new IsolationRecord(ticks, places.equals(places.stream().sorted().toList()));
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

    /** Whether the cover may come off. */
    public boolean complete() {
        return inOrder && ticks.stream().allMatch(Tick::done);
    }

    /** Whether any step was ticked. */
    public boolean begun() {
        return ticks.stream().anyMatch(Tick::done);
    }

    /** The steps that are still to be ticked; all of them if they were done out of order. */
    public List<String> open() {
        return ticks.stream()
                .filter(tick -> !inOrder || !tick.done())
                .map(Tick::step)
                .toList();
    }
}
