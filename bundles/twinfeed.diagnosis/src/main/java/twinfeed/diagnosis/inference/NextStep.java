// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.Observation;
import twinfeed.diagnosis.data.ObservationStage;

/**
 * The next best step: what practice asks first after a complaint, then the observation with the greatest expected information for
 * its minutes. What can be told or seen with the cover on goes first, as long as it is expected to tell enough.
 *
 * @param observation what to look at
 * @param informationBits expected information, bit
 * @param minutes minutes for it, with the isolation where the cover is still on
 */
public record NextStep(Observation observation, double informationBits, double minutes) {
    /**
     * Chooses the step.
     *
     * @param data the data
     * @param posterior what is known
     * @param asked observations that were asked already, those without an answer included
     * @param open whether the cover is off after a complete isolation
     * @return the step, or nothing if no step is worth its while
     */
    public static Optional<NextStep> choose(FaultData data, Posterior posterior, Set<String> asked, boolean open) {
        return choose(data, posterior, asked, open, true);
    }

    /**
     * Chooses the step, where some steps may be barred.
     *
     * @param powered whether the unit may be switched on for a step
     */
    public static Optional<NextStep> choose(
            FaultData all, Posterior posterior, Set<String> asked, boolean open, boolean powered) {
        Optional<NextStep> first = first(all, posterior, asked, powered);
        if (first.isPresent()) {
            return first;
        }
        FaultData data = powered ? all : all.unpowered();
        NextStep step = best(data, posterior, asked, true, data.limit("worthwhile"), 0);
        if (step == null) {
            double opening = open ? 0 : data.limit("opening");
            step = best(data, posterior, asked, false, data.limit("worthwhileAtAll"), opening);
        }
        if (step == null) {
            step = best(data, posterior, asked, true, data.limit("worthwhileAtAll"), 0);
        }
        return Optional.ofNullable(step);
    }

    /**
     * What practice asks before anything else after what was answered with yes: a dead unit begins at the board, repeated operation of a
     * cut-out with scale and low flow, water that runs on with the power switched off. No longer once something was found under the cover.
     *
     * @param powered whether the unit may be switched on for a step
     */
    public static Optional<NextStep> first(FaultData all, Posterior posterior, Set<String> asked, boolean powered) {
        FaultData data = powered ? all : all.unpowered();
        boolean found = posterior.answers().stream()
                .anyMatch(each -> each.yes()
                        && data.observation(each.key())
                                .filter(known -> known.place() == ObservationStage.COVER)
                                .isPresent());
        if (found) {
            return Optional.empty();
        }
        return data.first().entrySet().stream()
                .filter(each -> posterior.yes(each.getKey()))
                .flatMap(each -> each.getValue().stream())
                .filter(key -> !asked.contains(key))
                .flatMap(key -> data.observation(key).stream())
                .filter(each -> each.place().safe() && each.arises(posterior::yes))
                .findFirst()
                .map(each -> new NextStep(each, posterior.expectedInformation(each), each.minutes()));
    }

    private static @Nullable NextStep best(
            FaultData data, Posterior posterior, Set<String> asked, boolean safe, double least, double extra) {
        Collection<Observation> all = data.observations().values();
        NextStep best = null;
        for (Observation each : all) {
            if (each.place() == ObservationStage.FEED
                    || each.place().safe() != safe
                    || asked.contains(each.key())
                    || !each.arises(posterior::yes)) {
                continue;
            }
            NextStep step = new NextStep(each, posterior.expectedInformation(each), each.minutes() + extra);
            if (step.informationBits >= least && (best == null || step.rate() > best.rate())) {
                best = step;
            }
        }
        return best;
    }

    /** Expected information for a minute, bit/min. */
    public double rate() {
        return informationBits / Math.max(minutes, 0.5);
    }

    /** Whether the cover has to come off. */
    public boolean opensCover() {
        return observation.place() == ObservationStage.COVER;
    }
}
