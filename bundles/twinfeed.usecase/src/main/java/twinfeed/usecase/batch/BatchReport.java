// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.util.List;

/**
 * What came of a list of dwellings.
 *
 * @param judged number of dwellings judged
 * @param offered number of those to which a heater can be offered that is known to suit, as the house is or with work
 * @param estimates number of those for which the first offer is only an estimate, as readings are missing without which nobody can tell whether it suits
 * @param unanswered number of those of which a calculator left a check unanswered
 * @param unsafe number of those in which a safety check fails now
 * @param complaints number of those of which something is complained, for which a repair may be the answer
 * @param rejected number of rows that could not be used
 * @param before number of rows that earlier work, which was stopped, had judged
 * @param refused the first of them, at most a thousand, in their order; the workbook has them all
 */
public record BatchReport(
        int judged,
        int offered,
        int estimates,
        int unanswered,
        int unsafe,
        int complaints,
        int rejected,
        int before,
        List<Refused> refused) {
    public BatchReport {
        refused = List.copyOf(refused);
    }
}
