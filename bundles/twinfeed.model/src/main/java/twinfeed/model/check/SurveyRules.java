// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.survey.ParameterValue;
import twinfeed.model.survey.Photo;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyPackage.Literals;
import twinfeed.units.Temperature;

/** What must hold between the parts of a survey, and between it and the catalogue. */
final class SurveyRules {
    /** With less to heat a heater would pass more water than any pipe of a house brings, K: 10 kW heat 29 L/min by 5 K. */
    private static final double LEAST_RISE_K = 5;

    private static final Pattern ABSOLUTE = Pattern.compile("(?:[/\\\\]|[A-Za-z][A-Za-z0-9+.-]*:).*", Pattern.DOTALL);

    private SurveyRules() {}

    static void survey(Survey survey, @Nullable Catalogue catalogue, Problems problems) {
        candidates(survey, catalogue, problems);
        present(survey.getUnit(), catalogue, problems);
        temperatures(survey, problems);
        if (survey.getTakenOn() != null
                && survey.getSite() != null
                && survey.getSite().getLastInspection() != null
                && survey.getSite().getLastInspection().isAfter(survey.getTakenOn())) {
            problems.warning(
                    survey.getSite(),
                    Literals.SITE__LAST_INSPECTION,
                    "inspection.later",
                    survey.getTakenOn().toString());
        }
    }

    private static void candidates(Survey survey, @Nullable Catalogue catalogue, Problems problems) {
        Set<String> seen = new HashSet<>();
        for (String id : survey.getCandidates()) {
            if (!seen.add(id)) {
                problems.add(Severity.WARNING, survey, Literals.SURVEY__CANDIDATES, id, "candidate.twice");
            } else if (catalogue != null) {
                NameRules.leads(survey, Literals.SURVEY__CANDIDATES, id, ids(catalogue), "candidate.unknown", problems);
                catalogue.getHeaters().stream()
                        .filter(heater -> id.equals(heater.getId()) && heater.getWithdrawnOn() != null)
                        .forEach(heater -> problems.add(
                                Severity.WARNING,
                                survey,
                                Literals.SURVEY__CANDIDATES,
                                id,
                                "candidate.withdrawn",
                                heater.getWithdrawnOn().toString()));
            }
        }
    }

    private static void present(@Nullable PresentUnit unit, @Nullable Catalogue catalogue, Problems problems) {
        if (unit == null || unit.getHeaterId() == null) {
            return;
        }
        if (unit.getHeater() != null) {
            problems.warning(unit, Literals.PRESENT_UNIT__HEATER_ID, "unit.both");
        } else if (catalogue != null) {
            NameRules.leads(
                    unit,
                    Literals.PRESENT_UNIT__HEATER_ID,
                    unit.getHeaterId(),
                    ids(catalogue),
                    "unit.unknown",
                    problems);
        }
    }

    private static void temperatures(Survey survey, Problems problems) {
        Temperature outlet = survey.getTargetOutlet();
        Temperature intake = survey.getWinterIntake();
        if (outlet != null && intake != null && outlet.si() < intake.si() + LEAST_RISE_K) {
            problems.error(survey, Literals.SURVEY__TARGET_OUTLET, "outlet.notAbove", intake.toString());
        }
    }

    static void photo(Photo photo, Problems problems) {
        if (photo.getFile() != null && ABSOLUTE.matcher(photo.getFile()).matches()) {
            problems.error(photo, Literals.PHOTO__FILE, "photo.absolute");
        }
    }

    static void parameter(ParameterValue value, Problems problems) {
        if (value.getCalculator() == null || value.getKey() == null || value.getValue() == null) {
            problems.error(value, Literals.PARAMETER_VALUE__VALUE, "parameter.incomplete");
        }
    }

    private static List<String> ids(Catalogue catalogue) {
        return NameRules.names(catalogue.getHeaters(), CataloguePackage.Literals.HEATER__ID);
    }
}
