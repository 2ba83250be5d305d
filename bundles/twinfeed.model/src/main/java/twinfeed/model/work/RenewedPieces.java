// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.work;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.model.survey.WaterFeed;
import twinfeed.units.Quantity;

/**
 * Which things of a house are other ones with the work done: those that were not there, and those of which a reading has changed. A
 * quantity is told by being another object, so that a new device of the same rating is new. A cable that runs otherwise than before, and a pipe
 * with other fittings in it, are the same things but altered.
 */
public final class RenewedPieces {
    /** Stand among the paths for ends of the supplies, which are readings of a supply and no things of their own. */
    private static final String MAIN = "@water/source";

    private static final String FUSE = "@electricity/serviceFuse";

    /** Stands before the paths of what is altered. */
    private static final String ALTERED = "altered:";

    /** How a cable runs, which a work may change that leaves the cable itself. */
    private static final Set<EStructuralFeature> RUN = Set.of(
            SurveyPackage.Literals.CABLE_SEGMENT__METHOD,
            SurveyPackage.Literals.CABLE_SEGMENT__CONFIDENCE,
            SurveyPackage.Literals.CABLE_SEGMENT__AMBIENT,
            SurveyPackage.Literals.CABLE_SEGMENT__LOFT,
            SurveyPackage.Literals.CABLE_SEGMENT__GROUPED,
            SurveyPackage.Literals.CABLE_SEGMENT__LAYOUT,
            SurveyPackage.Literals.CABLE_SEGMENT__INSULATED);

    private final Set<EObject> renewed = new HashSet<>();
    private final Set<EObject> altered = new HashSet<>();
    private final boolean copied;
    private boolean main;
    private boolean fuse;

    /** No work. */
    public static final RenewedPieces NONE = new RenewedPieces(true);

    private RenewedPieces(boolean copied) {
        this.copied = copied;
    }

    /**
     * Compares two states of a house.
     *
     * @param before as it is
     * @param after a copy of it with the work done, in which quantities that stay are the same objects
     */
    public static RenewedPieces of(Survey before, Survey after) {
        return compared(before, after, true);
    }

    /**
     * Finds again in a house that was read from a file what the work renews.
     *
     * @param before as it is
     * @param after the same with the work done
     * @param paths what {@link #paths} said; where they are empty, as in files of earlier programs, quantities are told by their values
     */
    public static RenewedPieces read(Survey before, Survey after, List<String> paths) {
        if (paths.isEmpty()) {
            return compared(before, after, false);
        }
        RenewedPieces pieces = new RenewedPieces(false);
        pieces.main = paths.contains(MAIN);
        pieces.fuse = paths.contains(FUSE);
        paths.stream().filter(path -> !path.equals(MAIN) && !path.equals(FUSE)).forEach(path -> {
            boolean same = path.startsWith(ALTERED);
            EObject piece = at(after, same ? path.substring(ALTERED.length()) : path);
            if (piece != null) {
                (same ? pieces.altered : pieces.renewed).add(piece);
            }
        });
        return pieces;
    }

    private static @Nullable EObject at(Survey survey, String path) {
        try {
            return EcoreUtil.getEObject(survey, path);
        } catch (IllegalArgumentException | IndexOutOfBoundsException elsewhere) {
            return null;
        }
    }

    private static RenewedPieces compared(Survey before, Survey after, boolean copied) {
        RenewedPieces pieces = new RenewedPieces(copied);
        pieces.compare(before.getWater(), after.getWater());
        pieces.compare(before.getElectricity(), after.getElectricity());
        pieces.ends(before, after);
        return pieces;
    }

    /**
     * Where they stand in a house.
     *
     * @param after the house with the work done
     * @return paths as EMF writes them, sorted
     */
    public List<String> paths(Survey after) {
        Set<String> paths = new TreeSet<>();
        renewed.forEach(piece -> paths.add(EcoreUtil.getRelativeURIFragmentPath(after, piece)));
        altered.stream()
                .filter(this::altered)
                .forEach(piece -> paths.add(ALTERED + EcoreUtil.getRelativeURIFragmentPath(after, piece)));
        if (main) {
            paths.add(MAIN);
        }
        if (fuse) {
            paths.add(FUSE);
        }
        return List.copyOf(paths);
    }

    /** The ends of the supplies are readings of a supply, of which much else may change while they stay. */
    private void ends(Survey before, Survey after) {
        WaterFeed water = after.getWater();
        main = water != null
                && before.getWater() != null
                && (water.getSource() != before.getWater().getSource() || contains(water.getTest()));
        ElectricalFeed power = after.getElectricity();
        fuse = power != null
                && before.getElectricity() != null
                && !same(before.getElectricity().getServiceFuse(), power.getServiceFuse());
    }

    /** Whether the water comes from elsewhere, or with another pressure. */
    public boolean main() {
        return main;
    }

    /** Whether the service fuse is another one. */
    public boolean fuse() {
        return fuse;
    }

    /** Whether a thing of the house with the work done is new. */
    public boolean contains(@Nullable EObject piece) {
        return piece != null && renewed.contains(piece);
    }

    /** Whether a thing is the same as before, but runs otherwise or has other fittings in it. */
    public boolean altered(@Nullable EObject piece) {
        return piece != null && altered.contains(piece) && !renewed.contains(piece);
    }

    /** Whether something of it, without what it contains, has changed; what it contains is compared by itself. */
    private void compare(@Nullable EObject before, @Nullable EObject after) {
        if (after == null) {
            return;
        }
        if (before == null) {
            renewed.add(after);
            after.eAllContents().forEachRemaining(renewed::add);
            return;
        }
        for (EAttribute attribute : after.eClass().getEAllAttributes()) {
            // A tap that another pipe feeds is the same tap.
            boolean place = attribute == SurveyPackage.Literals.DRAW_OFF__TEE_AFTER
                    || attribute == SurveyPackage.Literals.DRAW_OFF__HEIGHT;
            if (!place && !same(before.eGet(attribute), after.eGet(attribute))) {
                (RUN.contains(attribute) ? altered : renewed).add(after);
            }
        }
        for (EReference reference : after.eClass().getEAllContainments()) {
            if (reference.isMany()) {
                lists((List<?>) before.eGet(reference), (List<?>) after.eGet(reference), after);
            } else {
                compare((EObject) before.eGet(reference), (EObject) after.eGet(reference));
            }
        }
    }

    /** Things with a name are compared with those of the same name, others with those at the same place. */
    private void lists(List<?> before, List<?> after, EObject owner) {
        for (int i = 0; i < after.size(); i++) {
            EObject element = (EObject) after.get(i);
            EStructuralFeature name = element.eClass().getEStructuralFeature("name");
            EObject old = name == null ? null : named(before, name, element.eGet(name));
            if (old == null && i < before.size() && (name == null || element.eGet(name) == null)) {
                old = (EObject) before.get(i);
            }
            compare(old, element);
            if (name == null && renewed.contains(element)) {
                altered.add(owner);
            }
        }
        boolean nameless = !after.isEmpty() && ((EObject) after.get(0)).eClass().getEStructuralFeature("name") == null;
        if (before.size() != after.size() && (after.isEmpty() || nameless)) {
            altered.add(owner);
        }
    }

    private static @Nullable EObject named(List<?> all, EStructuralFeature feature, @Nullable Object name) {
        return all.stream()
                .map(EObject.class::cast)
                .filter(each -> name != null && name.equals(each.eGet(feature)))
                .findFirst()
                .orElse(null);
    }

    private boolean same(@Nullable Object before, @Nullable Object after) {
        return copied && after instanceof Quantity ? before == after : Objects.equals(before, after);
    }
}
