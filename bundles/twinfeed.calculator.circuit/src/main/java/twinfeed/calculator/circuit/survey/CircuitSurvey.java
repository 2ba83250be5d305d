// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Context;
import twinfeed.calculator.Grid;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Site;

/**
 * What the circuit's checks know of one survey, read once for all heaters.
 *
 * @param rules the rule set
 * @param grid the conditions
 * @param feed what stands ahead of the circuit
 * @param device its protective device
 * @param residual its residual-current device
 * @param upstream a residual-current device ahead of that one
 * @param isolator its local isolator
 * @param run its cable
 * @param readings what was measured on it
 * @param room what was seen of the room
 */
public record CircuitSurvey(
        RuleSet rules,
        Grid grid,
        FeedData feed,
        DeviceData device,
        ResidualData residual,
        UpstreamData upstream,
        IsolatorData isolator,
        CableRun run,
        Readings readings,
        Room room) {

    /**
     * Readings on the circuit.
     *
     * @param loopOhm Zs measured cold, ohm
     * @param lineOhm R1 + R2 measured cold, ohm
     * @param insulationOhm insulation resistance, ohm
     * @param unitDisconnected whether the unit was disconnected at that
     */
    public record Readings(
            @Nullable Double loopOhm,
            @Nullable Double lineOhm,
            @Nullable Double insulationOhm,
            boolean unitDisconnected) {}

    /**
     * The room.
     *
     * @param outsideZones whether isolator and connections lie where they may
     * @param supplementary whether supplementary bonding is in place
     * @param extraneousParts whether metal pipes or the like are in the room; false: nothing to bond
     */
    public record Room(
            @Nullable Boolean outsideZones, @Nullable Boolean supplementary, @Nullable Boolean extraneousParts) {}

    public static CircuitSurvey of(Context context) {
        ElectricalFeed feed = context.survey().getElectricity();
        Circuit circuit = feed == null ? null : feed.getCircuit();
        DeviceData device = DeviceData.of(circuit == null ? null : circuit.getDevice(), context.rules());
        List<CableSegment> segments = circuit == null ? List.of() : circuit.getSegments();
        return new CircuitSurvey(
                context.rules(),
                context.grid(),
                FeedData.of(feed),
                device,
                ResidualData.of(circuit == null ? null : circuit.getRcd(), device.family(DeviceKind.Family.RCBO)),
                UpstreamData.of(circuit == null ? null : circuit.getUpstreamRcd()),
                IsolatorData.of(circuit == null ? null : circuit.getIsolator()),
                new CableRunReader(context).read(segments, device.cableFactor()),
                readings(circuit),
                room(context.survey().getSite()));
    }

    private static Readings readings(@Nullable Circuit circuit) {
        return circuit == null
                ? new Readings(null, null, null, false)
                : new Readings(
                        SiValues.of(circuit.getMeasuredLoop()),
                        SiValues.of(circuit.getMeasuredLine()),
                        SiValues.of(circuit.getInsulationResistance()),
                        Boolean.TRUE.equals(circuit.getUnitDisconnected()));
    }

    private static Room room(@Nullable Site site) {
        return site == null
                ? new Room(null, null, null)
                : new Room(site.getOutsideZones(), site.getSupplementaryBonding(), site.getExtraneousParts());
    }

    public String cite(String key) {
        return rules.text("cite." + key);
    }

    public double residualLimitA() {
        return rules.number("rcd.residual");
    }

    /** Whether a residual-current device of at most the limit protects the circuit. */
    public boolean protectedByResidual() {
        return residual.within(residualLimitA());
    }

    /** The residual-current device without overcurrent protection in the way of the heater's current, if there is one. */
    public @Nullable SharedRcd sharedRcd() {
        return SharedRcd.of(residual, upstream);
    }

    /** Whether the heater is known to overload that device. */
    public boolean overloadsShared(ShowerCase shower) {
        SharedRcd shared = sharedRcd();
        ShowerLoad load = shower.load();
        return shared != null && load != null && shared.overloadedBy(load);
    }

    /** Largest voltage drop allowed from the origin to the heater, V. */
    public double dropLimitV() {
        return rules.number("drop.limit") * rules.number("voltage.nominal");
    }

    /** Adds that limit to a working. */
    public Working.Builder addDropLimit(Working.Builder working, String symbol) {
        return working.input(
                symbol, "dropLimit", dropLimitV(), "V", rules.source("drop.limit"), Origin.rule("drop.limitV"));
    }
}
