// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.visit;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.Observation;
import twinfeed.diagnosis.data.ObservationStage;
import twinfeed.diagnosis.text.FaultTexts;

/**
 * A question that a fault-finding may ask; "yes" is the abnormal answer.
 *
 * @param key key of the observation
 * @param text the question
 * @param place key of where it is answered: {@code told}, {@code outside} or {@code cover}
 * @param how the place in words
 * @param minutes how long it takes, minutes, 0 or more; the safe isolation not counted
 */
public record FaultQuestion(String key, String text, String place, String how, double minutes) {
    /** Whether it is answered under the cover, and so waits for the safe isolation. */
    public boolean opensCover() {
        return place.equals("cover");
    }

    /** All of them: what is told, then what is seen from outside, then what is found under the cover. */
    public static List<FaultQuestion> all(Locale locale) {
        FaultTexts words = new FaultTexts(locale);
        return FaultData.current().observations().values().stream()
                .filter(each -> each.place() != ObservationStage.FEED)
                .sorted(Comparator.comparing(Observation::place))
                .map(each -> of(each, words))
                .toList();
    }

    private static FaultQuestion of(Observation observation, FaultTexts words) {
        String place = observation.place().name().toLowerCase(Locale.ROOT);
        return new FaultQuestion(
                observation.key(), words.question(observation.key()), place, words.stage(place), observation.minutes());
    }
}
