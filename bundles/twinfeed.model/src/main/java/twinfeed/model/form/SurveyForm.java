// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.form;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import twinfeed.model.job.JobPackage;
import twinfeed.model.survey.SurveyPackage.Literals;

/**
 * What is asked in a house, in the order in which one walks it: who and where, the unit, its fault, the water from the main to the unit,
 * the electricity from the service fuse to the unit, and what is wanted. Made by walking the model, so that a reading added there is
 * asked here.
 */
public final class SurveyForm {
    private static final List<EAttribute> VISIT =
            List.of(Literals.SURVEY__TAKEN_BY, Literals.SURVEY__TAKEN_ON, Literals.SURVEY__NOTES);

    private final List<FormPage> pages = new ArrayList<>();

    private SurveyForm() {
        pages.add(page(
                "visit",
                List.of(survey(VISIT), new FormPart(List.of(), List.of(JobPackage.Literals.JOB__CATALOGUE))),
                Literals.SURVEY__CUSTOMER,
                Literals.SURVEY__SITE));
        pages.add(page("unit", List.of(), Literals.SURVEY__UNIT, Literals.SURVEY__SYMPTOMS));
        pages.add(page("faults", List.of(), Literals.SURVEY__FAULT_FINDING));
        pages.add(page("water", List.of(), Literals.SURVEY__WATER));
        pages.add(page("electricity", List.of(), Literals.SURVEY__ELECTRICITY));
        List<EAttribute> others = new ArrayList<>(Literals.SURVEY.getEAllAttributes());
        others.removeAll(VISIT);
        pages.add(page("request", List.of(survey(others)), Literals.SURVEY__PARAMETERS, Literals.SURVEY__PHOTOS));
    }

    /** Its pages. */
    public static List<FormPage> pages() {
        return List.copyOf(new SurveyForm().pages);
    }

    private static FormPart survey(List<EAttribute> attributes) {
        return new FormPart(List.of(JobPackage.Literals.JOB__SURVEY), attributes);
    }

    private static FormPage page(String key, List<FormPart> first, EReference... roots) {
        List<FormPart> parts = new ArrayList<>(first);
        for (EReference root : roots) {
            add(List.of(JobPackage.Literals.JOB__SURVEY, root), parts);
        }
        return new FormPage(key, parts);
    }

    private static void add(List<EReference> path, List<FormPart> parts) {
        EClass type = path.get(path.size() - 1).getEReferenceType();
        if (!type.getEAllAttributes().isEmpty()) {
            parts.add(new FormPart(path, type.getEAllAttributes()));
        }
        for (EReference part : type.getEAllContainments()) {
            List<EReference> longer = new ArrayList<>(path);
            longer.add(part);
            add(longer, parts);
        }
    }
}
