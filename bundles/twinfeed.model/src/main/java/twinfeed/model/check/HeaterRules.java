// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.model.catalogue.CataloguePackage.Literals;
import twinfeed.model.catalogue.Element;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.Power;
import twinfeed.units.Quantity;

/** What must hold in a heater's data. */
final class HeaterRules {
    /** Instructions round the elements' shares. */
    private static final double LARGEST_SHARE_GAP = 0.01;

    /** Sums of exact decimals are off by some last digits. */
    private static final double ROUNDING = 1e-9;

    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9-]*");
    private static final Pattern INGRESS = Pattern.compile("IP[0-6X][0-9X][A-Z]?");

    private HeaterRules() {}

    static void heater(Heater heater, Problems problems) {
        elements(heater, problems);
        below(heater, Literals.HEATER__BREAK_PRESSURE, Literals.HEATER__MAKE_PRESSURE, problems);
        below(heater, Literals.HEATER__MINIMUM_RUNNING_PRESSURE, Literals.HEATER__MAXIMUM_STATIC_PRESSURE, problems);
        pair(heater, Literals.HEATER__INLET_LOSS, Literals.HEATER__INLET_LOSS_FLOW, problems);
        pair(heater, Literals.HEATER__DOWNSTREAM_PRESSURE, Literals.HEATER__DOWNSTREAM_FLOW, problems);
        if (heater.getId() != null && !ID.matcher(heater.getId()).matches()) {
            problems.error(heater, Literals.HEATER__ID, "id.letters");
        }
        if (heater.getIngress() != null && !INGRESS.matcher(heater.getIngress()).matches()) {
            problems.warning(heater, Literals.HEATER__INGRESS, "ingress.form");
        }
        if (heater.getStabilisedMinimum() != null && !Boolean.TRUE.equals(heater.getStabilised())) {
            problems.warning(heater, Literals.HEATER__STABILISED_MINIMUM, "stabilised.not");
        }
    }

    /** In a catalogue a heater is found by its id. */
    static void entry(Heater heater, Problems problems) {
        if (heater.getId() == null) {
            problems.error(heater, Literals.HEATER__ID, "id.none");
        }
    }

    private static void elements(Heater heater, Problems problems) {
        Power power = heater.getPower();
        List<Power> shares = heater.getElements().stream()
                .map(Element::getPower)
                .filter(Objects::nonNull)
                .toList();
        if (power == null
                || power.si() <= 0
                || shares.isEmpty()
                || shares.size() < heater.getElements().size()) {
            return;
        }
        double sum = shares.stream().mapToDouble(Quantity::si).sum();
        if (Math.abs(sum - power.si()) > (LARGEST_SHARE_GAP + ROUNDING) * power.si()) {
            String text = Power.ofSi(Math.round(sum)).toString();
            problems.error(heater, Literals.HEATER__ELEMENTS, "elements.sum", text, power.toString());
        }
    }

    private static void below(Heater heater, EStructuralFeature lower, EStructuralFeature upper, Problems problems) {
        if (heater.eGet(lower) instanceof Quantity low
                && heater.eGet(upper) instanceof Quantity high
                && low.si() >= high.si()) {
            problems.error(heater, lower, "pressure.notBelow", upper.getName(), high.toString());
        }
    }

    /** A loss says nothing without the flow at which it was found. */
    private static void pair(Heater heater, EStructuralFeature pressure, EStructuralFeature flow, Problems problems) {
        if (heater.eGet(pressure) != null && heater.eGet(flow) == null) {
            problems.error(heater, pressure, "pair.half", flow.getName());
        } else if (heater.eGet(pressure) == null && heater.eGet(flow) != null) {
            problems.error(heater, flow, "pair.half", pressure.getName());
        }
    }
}
