// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.visit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.repair.RepairAdvice;

/**
 * The job sheet of a fault-finding, all texts in one language. Plain data: user interfaces and workbooks show it and compute nothing.
 *
 * @param heater the unit that is there
 * @param conclusion key of what follows: {@code nothing-reported}, {@code part}, {@code supply}, {@code several} or {@code none-of-these}
 * @param summary the conclusion in a sentence or two; claims no certainty
 * @param causes causes, likeliest first; chances add up to 1
 * @param several chance that more than one thing has failed, 0..1
 * @param next the next best step; absent if one cause stands out or no step is worth its while
 * @param answers the observations that were answered
 * @param readings the readings, judged
 * @param isolation the safe isolation, step by step
 * @param isolationNotice what is to be said of it; empty if there is nothing
 * @param links what the supplies have to do with it
 * @param steps steps taken, in order
 * @param expected what to measure after the repair, with the values to expect
 * @param repair repair or replace, by price; absent without a price book, or without a part to renew
 * @param notices what is odd, for example an observation that the data do not know
 * @param unanswered number of checks that a calculator left unanswered, 0 or more; what they would have said of the supplies is not weighed
 * @param source where chances come from, and how sure they are
 * @param cautions cautions, to be printed always
 */
public record FaultSheet(
        String heater,
        String conclusion,
        String summary,
        List<Cause> causes,
        double several,
        @Nullable Next next,
        List<Answer> answers,
        List<Reading> readings,
        List<Tick> isolation,
        String isolationNotice,
        List<String> links,
        List<String> steps,
        List<Expected> expected,
        @Nullable RepairAdvice repair,
        List<String> notices,
        int unanswered,
        String source,
        List<String> cautions) {
    public FaultSheet {
        causes = List.copyOf(causes);
        answers = List.copyOf(answers);
        readings = List.copyOf(readings);
        isolation = List.copyOf(isolation);
        links = List.copyOf(links);
        steps = List.copyOf(steps);
        expected = List.copyOf(expected);
        notices = List.copyOf(notices);
        cautions = List.copyOf(cautions);
    }

    /**
     * A cause.
     *
     * @param part its key
     * @param title its name
     * @param prior chance before any answer, 0..1
     * @param chance chance after all answers, 0..1
     * @param reason why it fails, by the data
     * @param codes price-book codes of its renewal
     */
    public record Cause(String part, String title, double prior, double chance, String reason, List<String> codes) {
        public Cause {
            codes = List.copyOf(codes);
        }

        /** How likely in a word, as a key: {@code likely} from 0.5, {@code possible} from 0.1, {@code unlikely} from 0.01, else {@code remote}; judgement. */
        public String likelihood() {
            if (chance >= 0.5) {
                return "likely";
            }
            if (chance >= 0.1) {
                return "possible";
            }
            return chance >= 0.01 ? "unlikely" : "remote";
        }
    }

    /**
     * A step to take.
     *
     * @param observation key of the observation
     * @param question what to ask or look at
     * @param place key of where: {@code told}, {@code outside} or {@code cover}
     * @param how the place in words
     * @param minutes minutes for it, the isolation included where the cover is still on
     * @param informationBits information that it is expected to give, bit
     * @param procedure steps of the safe isolation that have to be ticked first; empty if none
     */
    public record Next(
            String observation,
            String question,
            String place,
            String how,
            double minutes,
            double informationBits,
            List<String> procedure) {
        public Next {
            procedure = List.copyOf(procedure);
        }
    }

    /**
     * An answered observation.
     *
     * @param observation its key
     * @param question the question
     * @param answer {@code yes}, {@code no} or {@code unknown}
     * @param origin {@code said}, {@code reading} or {@code feed}
     * @param note what was said and by whom; empty if nothing was noted
     */
    public record Answer(String observation, String question, String answer, String origin, String note) {}

    /**
     * A reading, judged.
     *
     * @param title what was measured
     * @param value what was read
     * @param expected what a sound one reads; empty if nobody knows
     * @param sound whether it is sound; absent if that cannot be told
     */
    public record Reading(String title, String value, String expected, @Nullable Boolean sound) {}

    /**
     * A step of the safe isolation.
     *
     * @param step its key
     * @param title its text
     * @param by who did it, empty if it is not ticked
     * @param at when, empty if it is not ticked
     * @param done whether it is ticked with both
     */
    public record Tick(String step, String title, String by, String at, boolean done) {}

    /**
     * A value to be measured after the repair.
     *
     * @param title what to measure
     * @param value what to expect
     */
    public record Expected(String title, String value) {}
}
