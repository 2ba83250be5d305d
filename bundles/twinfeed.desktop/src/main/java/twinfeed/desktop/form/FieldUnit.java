// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.Map;
import org.eclipse.emf.ecore.EAttribute;
import twinfeed.units.Kind;

/**
 * The unit that a field shows and that a number without one takes: the one in which the trade writes that very reading. For most readings
 * it is that of their kind; a bore is written in millimetres, a fault current in kiloamperes.
 */
public final class FieldUnit {
    private static final Map<String, String> OWN = Map.ofEntries(
            Map.entry("PipeSegment.size", "mm"),
            Map.entry("PipeSegment.bore", "mm"),
            Map.entry("PipeSegment.roughness", "mm"),
            Map.entry("ElectricalFeed.prospectiveFault", "kA"),
            Map.entry("ElectricalFeed.assemblyFaultRating", "kA"),
            Map.entry("ProtectiveDevice.breakingCapacity", "kA"),
            Map.entry("Completion.prospectiveFault", "kA"),
            Map.entry("ResidualDevice.residual", "mA"),
            Map.entry("UpstreamRcd.residual", "mA"),
            Map.entry("ResidualDevice.tripTime", "ms"),
            Map.entry("Completion.residualTime", "ms"),
            Map.entry("Circuit.insulationResistance", "MΩ"),
            Map.entry("Completion.insulation", "MΩ"));

    private FieldUnit() {}

    /** The unit of an attribute; empty where it has none, or where a number may stand without one. */
    public static String of(EAttribute attribute) {
        String own = OWN.get(attribute.getEContainingClass().getName() + "." + attribute.getName());
        if (own != null) {
            return own;
        }
        if (FieldForm.of(attribute) != FieldForm.QUANTITY) {
            return "";
        }
        Kind kind = FieldFormat.kind(attribute);
        return kind.mayBeBare() ? "" : kind.displayUnit();
    }
}
