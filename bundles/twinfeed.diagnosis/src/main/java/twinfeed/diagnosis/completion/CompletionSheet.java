// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.completion;

import java.util.List;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.job.Completion;
import twinfeed.model.survey.Survey;

/**
 * The finished work, judged.
 *
 * @param completion what was entered
 * @param house the house as it was finished, the readings in it
 * @param heater the unit that is in it
 * @param fitted whether that unit was fitted by this work; false where the one that was there stays
 * @param works the works that were taken for done, in words
 * @param customerWorks the same in the customer's words
 * @param readings all readings, judged
 */
public record CompletionSheet(
        Completion completion,
        Survey house,
        Heater heater,
        boolean fitted,
        List<String> works,
        List<String> customerWorks,
        List<CompletionReading> readings) {
    public CompletionSheet {
        works = List.copyOf(works);
        customerWorks = List.copyOf(customerWorks);
        readings = List.copyOf(readings);
    }

    /** The readings that are needed and were not entered, or were entered and cannot be judged. */
    public List<CompletionReading> open() {
        return readings.stream()
                .filter(each -> each.needed() && (!each.entered() || each.sound() == null))
                .toList();
    }

    /** The readings that are wrong. */
    public List<CompletionReading> wrong() {
        return readings.stream().filter(CompletionReading::wrong).toList();
    }

    /** The readings that are wrong and make the unit unsafe to use. */
    public List<CompletionReading> unsafe() {
        return readings.stream().filter(each -> each.wrong() && each.safety()).toList();
    }

    /** Whether every needed reading was entered and is as it should be. */
    public boolean complete() {
        return open().isEmpty() && wrong().isEmpty();
    }

    /** What follows, as a key: {@code unsafe}, {@code wrong}, {@code open} or {@code complete}. */
    public String state() {
        if (!unsafe().isEmpty()) {
            return "unsafe";
        }
        if (!wrong().isEmpty()) {
            return "wrong";
        }
        return open().isEmpty() ? "complete" : "open";
    }
}
