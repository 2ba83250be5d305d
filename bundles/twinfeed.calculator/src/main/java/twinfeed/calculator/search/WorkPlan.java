// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.search;

import java.util.List;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.model.assessment.Verdict;

/**
 * The least costly work that makes a heater suit a house, or why there is none.
 *
 * @param works the works, in the order of their ids; empty if none is needed or none is known
 * @param before the option as the house is
 * @param after the option with the works done, every calculator run again; the same as before if there are none
 * @param verdict suits, suits with work, does not suit, not as it is, or cannot tell
 * @param unmended keys of the checks that no work fixes, where it does not suit
 * @param cost what the works cost, by the prices that the search was given
 * @param exhausted whether the search gave up at its limit of sets rather than at an answer
 * @param offered every work that a check offered on the way, each once: what the works were chosen from
 */
public record WorkPlan(
        List<Remedy> works,
        OptionResult before,
        OptionResult after,
        Verdict verdict,
        List<String> unmended,
        WorkCost cost,
        boolean exhausted,
        List<Remedy> offered) {
    public WorkPlan {
        works = List.copyOf(works);
        unmended = List.copyOf(unmended);
        offered = List.copyOf(offered);
    }
}
