// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.List;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.SurveyPackage.Literals;
import twinfeed.units.Quantity;
import twinfeed.units.Resistance;

/** What must hold in an electrical feed. */
final class ElectricalRules {
    private static final List<String> RCD_TYPES = List.of("AC", "A", "F", "B");
    private static final List<String> ISOLATORS = List.of("pull-cord", "wall", "none");

    private ElectricalRules() {}

    /**
     * Zs is read with the main earth connected and Ze without it, so parallel paths can bring Zs below Ze: unusual, and no
     * error.
     */
    static void feed(ElectricalFeed feed, Problems problems) {
        absent(feed, Literals.ELECTRICAL_FEED__MAIN_BONDING, problems);
        absent(feed, Literals.ELECTRICAL_FEED__EARTHING_CONDUCTOR, problems);
        if (Boolean.FALSE.equals(feed.getSpareWay()) && feed.isSetSpareWayBehind()) {
            problems.error(feed, Literals.ELECTRICAL_FEED__SPARE_WAY_BEHIND, "none.described");
        }
        Circuit circuit = feed.getCircuit();
        Resistance origin = feed.getExternalLoop();
        Resistance far = circuit == null ? null : circuit.getMeasuredLoop();
        if (circuit != null && origin != null && far != null && high(far) < low(origin)) {
            problems.warning(circuit, Literals.CIRCUIT__MEASURED_LOOP, "loop.belowOrigin", origin.toString());
        }
    }

    static void circuit(Circuit circuit, Problems problems) {
        NameRules.unique(circuit.getSegments(), Literals.CABLE_SEGMENT__NAME, problems);
    }

    /** A part that is said not to be there has no size. */
    private static void absent(EObject owner, EAttribute reading, Problems problems) {
        EAttribute presence = Presence.of(reading);
        if (presence != null && Boolean.FALSE.equals(owner.eGet(presence)) && owner.eIsSet(reading)) {
            problems.error(owner, reading, "none.described");
        }
    }

    static void segment(CableSegment segment, Problems problems) {
        absent(segment, Literals.CABLE_SEGMENT__CPC, problems);
        Quantity length = segment.getLength();
        Quantity insulated = segment.getInsulated();
        if (length != null && insulated != null && low(insulated) > high(length)) {
            problems.error(segment, Literals.CABLE_SEGMENT__INSULATED, "insulated.longer", length.toString());
        }
        Quantity line = segment.getSize();
        Quantity earth = segment.getCpc();
        if (line != null && earth != null && earth.si() > line.si()) {
            problems.warning(segment, Literals.CABLE_SEGMENT__CPC, "cpc.larger", line.toString());
        }
    }

    static void rcd(ResidualDevice rcd, Problems problems) {
        NameRules.leads(rcd, Literals.RESIDUAL_DEVICE__TYPE, rcd.getType(), RCD_TYPES, "word.unknown", problems);
        boolean described = rcd.getType() != null || rcd.getResidual() != null || rcd.getTripTime() != null;
        if (rcd.isSetKind() && rcd.getKind() == RcdKind.NONE && described) {
            problems.error(rcd, Literals.RESIDUAL_DEVICE__KIND, "rcd.noneDescribed");
        }
    }

    static void isolator(Isolator isolator, Problems problems) {
        NameRules.leads(isolator, Literals.ISOLATOR__KIND, isolator.getKind(), ISOLATORS, "word.unknown", problems);
        boolean described = isolator.getRating() != null || isolator.isSetCondition();
        if ("none".equals(isolator.getKind()) && described) {
            problems.error(isolator, Literals.ISOLATOR__KIND, "none.described");
        }
    }

    static void load(Load load, Problems problems) {
        if (load.getCurrent() != null && load.getPower() != null) {
            problems.warning(
                    load, Literals.LOAD__POWER, "load.both", load.getCurrent().toString());
        }
    }

    private static double low(Quantity quantity) {
        return quantity.si() - quantity.halfWidthSi();
    }

    private static double high(Quantity quantity) {
        return quantity.si() + quantity.halfWidthSi();
    }
}
