// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.model.io.NearestName;
import twinfeed.model.survey.SurveyPackage.Literals;

/** The columns that somebody may have meant by a name that is none: those that end like it, or in a word that is spelled much like its last one. */
final class NearestColumns {
    /** Parts of a survey that a list has no columns for: their own way of entry, or none. */
    private static final Set<EReference> LEFT_OUT = Set.of(
            Literals.SURVEY__SYMPTOMS,
            Literals.SURVEY__FAULT_FINDING,
            Literals.SURVEY__PHOTOS,
            Literals.SURVEY__PARAMETERS);

    private static final List<String> ALL = all();

    private static final int MOST = 4;

    private NearestColumns() {}

    /**
     * The columns that are most like a name.
     *
     * @param name a name that is no column, for example {@code address}
     * @return names of columns, for example {@code site.address}, at most four; empty if none is like it
     */
    static List<String> of(String name) {
        String written = plain(name);
        String last = last(written);
        List<String> like =
                those(column -> plain(column).equals(written) || plain(column).endsWith("." + written));
        if (like.isEmpty()) {
            like = those(column -> last(plain(column)).equals(last));
        }
        if (like.isEmpty()) {
            Set<String> words = new LinkedHashSet<>();
            ALL.forEach(column -> words.add(last(plain(column))));
            String nearest = NearestName.of(last, words);
            like = nearest.isEmpty()
                    ? List.of()
                    : those(column -> last(plain(column)).equals(nearest));
        }
        return like.subList(0, Math.min(MOST, like.size()));
    }

    private static List<String> those(Predicate<String> which) {
        return ALL.stream().filter(which).toList();
    }

    /** Without what sets elements, capitals and blanks apart. */
    private static String plain(String column) {
        return column.replaceAll("\\[[^]]*]", "").toLowerCase(Locale.ROOT).replaceAll("[ _-]", "");
    }

    private static String last(String column) {
        return column.substring(column.lastIndexOf('.') + 1);
    }

    private static List<String> all() {
        List<String> columns = new ArrayList<>(List.of(Columns.DWELLING, Columns.SYMPTOMS));
        add(Literals.SURVEY, "", columns, new ArrayList<>());
        // Of two addresses a list of dwellings is more likely to have the dwelling's.
        List<String> customers =
                columns.stream().filter(each -> each.startsWith("customer.")).toList();
        columns.removeAll(customers);
        columns.addAll(customers);
        return List.copyOf(columns);
    }

    private static void add(EClass type, String before, List<String> columns, List<EClass> above) {
        if (above.contains(type)) {
            return;
        }
        List<EClass> way = new ArrayList<>(above);
        way.add(type);
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (feature instanceof EAttribute) {
                columns.add(before + feature.getName());
            } else if (feature instanceof EReference part && part.isContainment() && !LEFT_OUT.contains(part)) {
                String element = part.isMany() ? "[1]" : "";
                add(part.getEReferenceType(), before + part.getName() + element + ".", columns, way);
            }
        }
    }
}
