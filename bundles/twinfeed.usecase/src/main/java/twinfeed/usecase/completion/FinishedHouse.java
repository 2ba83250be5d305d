// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import java.util.List;
import twinfeed.calculator.Candidate;
import twinfeed.model.survey.Survey;

/**
 * A house as it should be when the work is finished, before anything is measured in it. Found once, it serves for every reading that is
 * typed.
 *
 * @param house the survey with the work done
 * @param candidate the unit that is in it then
 * @param works the works that were taken for done, in words
 * @param customerWorks the same in the customer's words
 */
public record FinishedHouse(Survey house, Candidate candidate, List<String> works, List<String> customerWorks) {
    public FinishedHouse {
        works = List.copyOf(works);
        customerWorks = List.copyOf(customerWorks);
    }
}
