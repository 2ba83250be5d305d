// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Flow;
import twinfeed.units.Pressure;
import twinfeed.units.Resistance;

/** What the tests of this package share. */
public final class Fixtures {
    private Fixtures() {}

    public static Runner runner(Calculator... calculators) {
        return new Runner(List.of(calculators), (mean, spread, month, southern) -> mean + spread + month);
    }

    /** A work that leaves its id in the survey's notes, where a made-up calculator finds that it is done. */
    public static Remedy work(String id) {
        return new Remedy(
                id,
                id,
                Map.of(),
                List.of(),
                false,
                0,
                survey -> survey.setNotes((survey.getNotes() == null ? "" : survey.getNotes()) + id + " "));
    }

    /** Ids of the works that a finding offers. */
    public static List<String> works(Finding finding) {
        return finding.remedies().stream().map(Remedy::id).toList();
    }

    /** A copy of a house in which a work of a finding is done. */
    public static Survey after(Survey house, Finding finding, String work) {
        Survey copy = EcoreUtil.copy(house);
        finding.remedies().stream()
                .filter(each -> each.id().equals(work))
                .findFirst()
                .orElseThrow(() -> new AssertionError(work + " is not among " + works(finding)))
                .edit()
                .accept(copy);
        return copy;
    }

    public static Candidate candidate() {
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        heater.setId("h95");
        return new Candidate(heater, false);
    }

    public static Survey survey(String flow, String loop) {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        survey.setElectricity(SurveyFactory.eINSTANCE.createElectricalFeed());
        survey.setWater(SurveyFactory.eINSTANCE.createWaterFeed());
        survey.getWater().setTest(SurveyFactory.eINSTANCE.createWaterTest());
        survey.getWater().getTest().setFlow(Flow.valueOf(flow));
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("3 bar ± 0 bar"));
        survey.getElectricity().setExternalLoop(Resistance.valueOf(loop));
        return survey;
    }

    /** The value of a finding in the unit in which its check is printed. */
    public static double value(Finding finding) {
        return figures(finding).value();
    }

    /** Its limit in the same unit. */
    public static double limit(Finding finding) {
        return figures(finding).limit();
    }

    private static Finding.Figures figures(Finding finding) {
        Finding.Figures figures = finding.printed();
        if (figures == null) {
            throw new AssertionError(finding.check().key() + " has no figures: " + finding.outcome());
        }
        return figures;
    }
}
