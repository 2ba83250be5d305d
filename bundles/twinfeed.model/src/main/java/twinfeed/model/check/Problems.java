// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.units.text.Texts;

/** Collects problems in the order in which they are found. */
final class Problems {
    private static final Texts MESSAGES = new Texts(Problems.class, "messages");

    private final List<Problem> list = new ArrayList<>();

    List<Problem> list() {
        return List.copyOf(list);
    }

    void error(EObject object, EStructuralFeature feature, String key, String... arguments) {
        add(Severity.ERROR, object, feature, reading(object, feature), key, arguments);
    }

    void warning(EObject object, EStructuralFeature feature, String key, String... arguments) {
        add(Severity.WARNING, object, feature, reading(object, feature), key, arguments);
    }

    /** With the reading given, for one of a list of values. */
    void add(
            Severity severity,
            EObject object,
            EStructuralFeature feature,
            String reading,
            String key,
            String... arguments) {
        list.add(new Problem(
                severity,
                key,
                ModelPath.of(object, feature),
                ModelPath.name(object),
                reading,
                MESSAGES.toReader(key + ".wrong", arguments),
                MESSAGES.toReader(key + ".right", arguments)));
    }

    static String text(String key, String... arguments) {
        return MESSAGES.toReader(key, arguments);
    }

    private static String reading(EObject object, EStructuralFeature feature) {
        Object value = object.eIsSet(feature) ? object.eGet(feature) : null;
        return value == null || value instanceof EObject || value instanceof List<?> ? "" : value.toString();
    }
}
