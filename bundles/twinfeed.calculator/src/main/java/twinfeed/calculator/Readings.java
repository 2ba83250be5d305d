// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;

/** Tells which readings a survey and a heater lack. Absent is not zero: only what was never entered is missing. */
public final class Readings {
    private static final String SURVEY = "survey.";
    private static final String HEATER = "heater.";

    private final Survey survey;
    private final Map<String, List<String>> known = new LinkedHashMap<>();
    private final Map<String, List<String>> knownOfHeater = new LinkedHashMap<>();
    /** By the list itself: a check has one list of needs for good, and asks for it in each of thousands of draws. */
    private final Map<List<String>, List<String>> knownOfNeeds = new IdentityHashMap<>();

    private @Nullable Heater heaterKnown;

    /** The readings of a survey, which must not change while this is used. */
    public Readings(Survey survey) {
        this.survey = survey;
    }

    /**
     * The missing ones among some readings.
     *
     * @param needs paths as in {@link Check#needs()}
     * @param heater the heater to which {@code heater.} refers
     * @return paths that are missing; an element of a list is named, for example
     *     {@code survey.electricity.circuit.segments[loft].method}
     * @throws IllegalArgumentException if a path names no feature of the model
     */
    public List<String> missing(List<String> needs, Heater heater) {
        if (heater != heaterKnown) {
            knownOfHeater.clear();
            knownOfNeeds.clear();
            heaterKnown = heater;
        }
        return knownOfNeeds.computeIfAbsent(needs, all -> lacking(all, heater));
    }

    private List<String> lacking(List<String> needs, Heater heater) {
        List<String> missing = null;
        for (String path : needs) {
            List<String> lacking = path.startsWith(HEATER)
                    ? knownOfHeater.computeIfAbsent(
                            path, each -> walk(heater, each.substring(HEATER.length()), "heater"))
                    : known.computeIfAbsent(path, this::ofSurvey);
            if (!lacking.isEmpty()) {
                missing = missing == null ? new ArrayList<>() : missing;
                addNew(missing, lacking);
            }
        }
        return missing == null ? List.of() : missing;
    }

    /** Two paths through the same list lack the list itself alike; a reader wants to be told once. */
    private static void addNew(List<String> missing, List<String> lacking) {
        lacking.stream().filter(path -> !missing.contains(path)).forEach(missing::add);
    }

    private List<String> ofSurvey(String path) {
        if (!path.startsWith(SURVEY)) {
            throw new IllegalArgumentException("a path begins with survey. or heater.: " + path);
        }
        return walk(survey, path.substring(SURVEY.length()), "survey");
    }

    private static List<String> walk(EObject owner, String path, String walked) {
        int dot = path.indexOf('.');
        String name = dot < 0 ? path : path.substring(0, dot);
        EStructuralFeature feature = owner.eClass().getEStructuralFeature(name);
        if (feature == null) {
            throw new IllegalArgumentException(owner.eClass().getName() + " has no " + name);
        }
        String here = walked + "." + name;
        Object value = owner.eIsSet(feature) ? owner.eGet(feature) : null;
        if (value == null || (value instanceof List<?> list && list.isEmpty())) {
            return List.of(here);
        }
        return dot < 0 ? List.of() : inside(value, path.substring(dot + 1), here);
    }

    private static List<String> inside(Object value, String path, String here) {
        if (!(value instanceof List<?> list)) {
            return walk((EObject) value, path, here);
        }
        List<String> missing = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            EObject element = (EObject) list.get(i);
            missing.addAll(walk(element, path, here + "[" + name(element, i) + "]"));
        }
        return missing;
    }

    public static String name(EObject element, int index) {
        EStructuralFeature feature = element.eClass().getEStructuralFeature("name");
        @Nullable Object name = feature == null ? null : element.eGet(feature);
        return name == null ? String.valueOf(index + 1) : name.toString();
    }
}
