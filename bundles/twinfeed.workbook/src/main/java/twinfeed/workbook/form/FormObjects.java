// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.form;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.model.form.FormPart;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobPackage;
import twinfeed.model.survey.SurveyFactory;

/** The job that a form is read into; its parts are made when the first of their readings comes. */
final class FormObjects {
    private final Job job;
    private final Map<String, EObject> numbered = new HashMap<>();

    FormObjects(Job job) {
        this.job = job;
        job.setSurvey(SurveyFactory.eINSTANCE.createSurvey());
    }

    Job job() {
        return job;
    }

    /** The attribute at the end of a path without lists; null if the model has no such one. */
    static @Nullable EAttribute attribute(String path) {
        EClass type = JobPackage.Literals.JOB;
        String[] names = path.split("\\.");
        for (int at = 0; at < names.length - 1; at++) {
            if (!(type.getEStructuralFeature(names[at]) instanceof EReference part) || part.isMany()) {
                return null;
            }
            type = part.getEReferenceType();
        }
        return type.getEStructuralFeature(names[names.length - 1]) instanceof EAttribute attribute ? attribute : null;
    }

    /** The object that a path's attribute belongs to. */
    EObject owner(String path) {
        EObject owner = job;
        String[] names = path.split("\\.");
        for (int at = 0; at < names.length - 1; at++) {
            owner = single(owner, owner.eClass().getEStructuralFeature(names[at]));
        }
        return owner;
    }

    private static EObject single(EObject owner, EStructuralFeature part) {
        if (owner.eGet(part) instanceof EObject there) {
            return there;
        }
        EObject made = EcoreUtil.create(((EReference) part).getEReferenceType());
        owner.eSet(part, made);
        return made;
    }

    /** Whether a table has a row of that number. */
    boolean has(String table, String number) {
        return numbered.containsKey(table + " " + number);
    }

    /**
     * Adds an element to a table's list.
     *
     * @param number its number in the table; empty for none
     * @param parent number of the row that it belongs to, in a table of elements of others
     * @return the element; null if there is no such row
     */
    @Nullable
    EObject add(FormPart part, String number, String parent) {
        EObject owner = job;
        List<EReference> way = part.path();
        int from = 0;
        if (!part.parent().isEmpty()) {
            @Nullable EObject found = numbered.get(part.parent() + " " + parent);
            if (found == null) {
                return null;
            }
            owner = found;
            from = part.parent().split("\\.").length;
        }
        for (EReference step : way.subList(from, way.size() - 1)) {
            owner = single(owner, step);
        }
        EReference last = way.get(way.size() - 1);
        EObject element = EcoreUtil.create(last.getEReferenceType());
        list(owner, last).add(element);
        if (!number.isEmpty()) {
            numbered.put(part.key() + " " + number, element);
        }
        return element;
    }

    @SuppressWarnings("unchecked")
    private static List<EObject> list(EObject owner, EReference reference) {
        return (List<EObject>) owner.eGet(reference);
    }
}
