// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import java.util.List;
import java.util.Optional;
import twinfeed.diagnosis.data.FaultData;

/**
 * What a survey says about the fault of the unit that is there.
 *
 * @param data the judgement on which it rests
 * @param evidence the answers
 * @param posterior the chances
 * @param next the next best step; empty if one part stands out or no step is worth its while
 */
public record Diagnosis(FaultData data, Evidence evidence, Posterior posterior, Optional<NextStep> next) {
    /** Parts that only a unit with electronics has. */
    private static final List<String> ELECTRONICS = List.of("board", "thermistor", "transformer");

    /** What follows. */
    public enum Conclusion {
        /** Nobody reported a fault. */
        NOTHING_REPORTED,
        /** A part stands out. */
        PART,
        /** The supplies explain it: no part of the unit is blamed. */
        SUPPLY,
        /** More than one cause is likely. */
        SEVERAL,
        /** What the list does not know. */
        NONE_OF_THESE
    }

    /** Diagnoses. */
    public static Diagnosis of(Evidence evidence, FaultData all) {
        FaultData data = evidence.electronics() ? all : all.without(ELECTRONICS);
        Posterior posterior = Posterior.of(data, evidence.answers());
        Optional<NextStep> next = posterior.settled() || !evidence.begun()
                ? NextStep.first(data, posterior, evidence.asked(), evidence.mayBePowered())
                : NextStep.choose(
                                data,
                                posterior,
                                evidence.asked(),
                                evidence.isolation().complete(),
                                evidence.mayBePowered())
                        .filter(step -> !step.opensCover() || !explained(evidence, posterior));
        return new Diagnosis(data, evidence, posterior, next);
    }

    /** Where the feed explains what was reported, no cover comes off before the feed has been looked at. */
    private static boolean explained(Evidence evidence, Posterior posterior) {
        return posterior.first().part().equals(FaultData.SUPPLY)
                && evidence.answers().stream()
                        .anyMatch(answer -> answer.origin() == ObservationAnswer.Origin.FEED && answer.yes());
    }

    /** What follows. */
    public Conclusion conclusion() {
        if (!evidence.any()) {
            return Conclusion.NOTHING_REPORTED;
        }
        if (posterior.severalLikely()) {
            return Conclusion.SEVERAL;
        }
        return switch (posterior.first().part()) {
            case FaultData.SUPPLY -> Conclusion.SUPPLY;
            case FaultData.NONE -> Conclusion.NONE_OF_THESE;
            default -> Conclusion.PART;
        };
    }
}
