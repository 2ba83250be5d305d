// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.text;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.job.JobPackage;
import twinfeed.model.survey.SurveyPackage;

/** What a person calls a reading that the model names by its path. */
public final class ReadingName {
    private ReadingName() {}

    /**
     * The label of a reading, and the element that it belongs to: {@code Length (rising main)}.
     *
     * @param path a path such as {@code survey.water.segments[rising main].length}; one that leads nowhere is the answer itself
     */
    public static String of(String path, Words words) {
        String element = path.contains("[") ? path.substring(path.lastIndexOf('[') + 1, path.lastIndexOf(']')) : "";
        String plain = path.replaceAll("\\[[^]]*]", "");
        @Nullable String label = label(plain, words);
        if (label == null) {
            return path;
        }
        return element.isEmpty() ? label : label + " (" + element + ")";
    }

    private static EClass root(String plain) {
        if (plain.startsWith("completion.")) {
            return JobPackage.Literals.JOB;
        }
        return plain.startsWith("heaters.") ? CataloguePackage.Literals.CATALOGUE : SurveyPackage.Literals.SURVEY;
    }

    private static @Nullable String label(String plain, Words words) {
        @Nullable EClass owner = root(plain);
        @Nullable EStructuralFeature last = null;
        for (String name : plain.replaceFirst("^survey\\.", "").split("\\.")) {
            last = owner == null ? null : owner.getEStructuralFeature(name);
            owner = last instanceof EReference reference ? reference.getEReferenceType() : null;
        }
        @Nullable
        String label = last == null
                ? null
                : words.find("label." + last.getEContainingClass().getName() + "." + last.getName());
        return label == null ? null : label.replace("&", "");
    }
}
