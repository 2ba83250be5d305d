// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.document.OfferedFindings;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.survey.Survey;
import twinfeed.model.work.RenewedPieces;
import twinfeed.model.work.WorkDone;

/**
 * The two supplies of a house as they run to the unit, piece by piece. A piece of which nothing is recorded is there all the same:
 * that it is not known is worth seeing.
 *
 * @param water from the main on; a tap stands behind the pipe at whose end it leaves
 * @param power from the service fuse on
 * @param unit where both end
 * @param measured whether pressures or voltages along them are known
 */
public record HouseDrawing(List<DrawnPiece> water, List<DrawnPiece> power, DrawnPiece unit, boolean measured) {
    public HouseDrawing {
        water = List.copyOf(water);
        power = List.copyOf(power);
    }

    /** The drawing of a survey of which nothing was found yet. */
    public static HouseDrawing unassessed(Survey survey, Locale locale) {
        return HousePieces.of(survey, survey, null, PieceFindings.none(locale), List.of(), RenewedPieces.NONE, locale);
    }

    /** The drawing of the house as it is, with what was found for one heater. */
    public static HouseDrawing asItIs(Survey survey, OptionAssessment option, Locale locale) {
        PieceFindings findings = PieceFindings.of(option, names(survey), locale);
        return HousePieces.of(survey, survey, option, findings, option.getFindings(), RenewedPieces.NONE, locale);
    }

    /**
     * The drawing of the house with the work of an option done.
     *
     * @param survey the house as it is
     * @param changed a copy of it with the work done
     */
    public static HouseDrawing withWork(Survey survey, Survey changed, OptionAssessment option, Locale locale) {
        return withWork(survey, changed, option, RenewedPieces.of(survey, changed), locale);
    }

    /** The same where nothing but the supplies with the work done is at hand, as with a quote. */
    public static HouseDrawing withWork(Survey survey, WorkDone done, OptionAssessment option, Locale locale) {
        return withWork(survey, done.supplies(), option, done.pieces(survey), locale);
    }

    private static HouseDrawing withWork(
            Survey survey, Survey changed, OptionAssessment option, RenewedPieces renewed, Locale locale) {
        List<Finding> answers = OfferedFindings.findings(option);
        PieceFindings findings = PieceFindings.of(option, answers, names(changed), locale);
        return HousePieces.of(survey, changed, option, findings, answers, renewed, locale);
    }

    /** Whether an option has work that can be drawn. */
    public static boolean hasWork(@Nullable OptionAssessment option) {
        return option != null && !option.getAfterWork().isEmpty();
    }

    /** All pieces: water, power, unit. */
    public List<DrawnPiece> pieces() {
        return Stream.of(water, power, List.of(unit)).flatMap(List::stream).toList();
    }

    /** All of it in words, for screen readers. */
    public String spoken() {
        return pieces().stream().map(DrawnPiece::sentence).collect(Collectors.joining("; "));
    }

    /** The names of pipes and cables, by which findings name the piece that governs. */
    public static Set<String> names(Survey survey) {
        Set<String> names = new LinkedHashSet<>();
        if (survey.getWater() != null) {
            survey.getWater().getSegments().forEach(pipe -> names.add(pipe.getName()));
        }
        if (survey.getElectricity() != null && survey.getElectricity().getCircuit() != null) {
            survey.getElectricity().getCircuit().getSegments().forEach(cable -> names.add(cable.getName()));
        }
        names.remove(null);
        return names;
    }
}
