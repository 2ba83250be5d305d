// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.work;

import java.util.List;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/**
 * The supplies of a house with the work of an option done.
 *
 * @param supplies a survey with nothing but the two supplies
 * @param renewed paths in it of what the work renews, see {@link RenewedPieces#paths}; none in files of earlier programs
 */
public record WorkDone(Survey supplies, List<String> renewed) {
    public WorkDone {
        renewed = List.copyOf(renewed);
    }

    /**
     * The supplies of a changed house.
     *
     * @param before the house as it is
     * @param changed a copy of it with the work done, whose supplies are taken out of it
     */
    public static WorkDone of(Survey before, Survey changed) {
        RenewedPieces pieces = RenewedPieces.of(before, changed);
        Survey supplies = SurveyFactory.eINSTANCE.createSurvey();
        supplies.setWater(changed.getWater());
        supplies.setElectricity(changed.getElectricity());
        return new WorkDone(supplies, pieces.paths(supplies));
    }

    /** What is new in it, compared with the house as it is. */
    public RenewedPieces pieces(Survey before) {
        return RenewedPieces.read(before, supplies, renewed);
    }
}
