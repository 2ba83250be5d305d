// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import twinfeed.document.DocumentTexts;
import twinfeed.document.OfferedFindings;
import twinfeed.document.QuoteDocument;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.survey.Survey;
import twinfeed.model.work.WorkDone;

/**
 * A drawing of the house for a quote.
 *
 * @param title which heater, and which state of the house
 * @param drawing the drawing
 */
public record QuoteDrawing(String title, HouseDrawing drawing) {
    /**
     * The drawings of a quote: for the option that is offered first the house as it is, and with the work done where it needs any;
     * where nothing is offered for the unit that is there. None where nothing of either supply was surveyed.
     */
    public static List<QuoteDrawing> of(QuoteDocument document) {
        Locale locale = document.locale();
        Survey survey = document.survey();
        if (survey.getWater() == null && survey.getElectricity() == null) {
            return List.of();
        }
        Optional<OptionAssessment> about = option(document);
        if (about.isEmpty()) {
            return List.of(new QuoteDrawing(
                    DrawingTexts.in(locale).get("paper.surveyed"), HouseDrawing.unassessed(survey, locale)));
        }
        OptionAssessment option = about.get();
        DocumentTexts words = DrawingTexts.in(locale);
        Map<String, String> heater = Map.of("heater", option.getTitle() == null ? "" : option.getTitle());
        List<QuoteDrawing> drawings = new ArrayList<>();
        drawings.add(new QuoteDrawing(words.get("paper.asItIs", heater), HouseDrawing.asItIs(survey, option, locale)));
        WorkDone done = document.withWork();
        if (done != null) {
            drawings.add(new QuoteDrawing(
                    words.get("paper.withWork", heater), HouseDrawing.withWork(survey, done, option, locale)));
        }
        return drawings;
    }

    private static Optional<OptionAssessment> option(QuoteDocument document) {
        return document.quote().getOptions().stream()
                .findFirst()
                .flatMap(option -> OfferedFindings.assessed(document.assessment(), option))
                .or(() -> document.assessment().getOptions().stream().findFirst());
    }
}
