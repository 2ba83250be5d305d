// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.circuit.survey.CodeNumbers;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.RcdScope;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.UpstreamRcd;
import twinfeed.units.Current;
import twinfeed.units.LetThrough;
import twinfeed.units.text.Phrase;

/**
 * A new protective device as a change of the survey.
 *
 * @param rules the rule set, for what a usual new device is
 * @param kind its kind
 * @param ratingA its rating, A
 * @param combined whether it has residual-current protection of its own
 * @param placement where it is put
 */
record DeviceChange(RuleSet rules, DeviceKind kind, double ratingA, boolean combined, DevicePlacement placement) {
    private static final String TYPE = "A";

    /** Main switch of a new consumer unit, and rating of a new residual-current device ahead of all circuits, A (common practice). */
    private static final double NEW_SWITCH_A = 100;

    /** Residual current of a time-delayed device ahead of all circuits, A (common practice). */
    private static final double DELAYED_A = 0.1;

    Remedy remedy() {
        String rating = CodeNumbers.number(ratingA);
        String code = (combined ? "rcbo-" : "breaker-") + rating;
        List<Remedy.Item> items = new ArrayList<>(placement.items());
        items.add(Remedy.Item.of(code, 1));
        items.add(Remedy.Item.of("task-change-device", 1));
        return new Remedy(
                placement.prefix() + code,
                "device",
                Map.of(
                        "rating",
                        rating,
                        "device",
                        Phrase.of(combined ? "device.rcbo" : "device.breaker"),
                        "placement",
                        Phrase.of(placement.key()),
                        "forCustomer",
                        Phrase.of(placement.customerKey())),
                items,
                false,
                0,
                this::change);
    }

    private void change(Survey copy) {
        upstream(CircuitChanges.circuit(copy));
        replace(copy);
        switch (placement) {
            case OWN_WAY -> {
                CircuitChanges.feed(copy).setSpareWay(false);
                CircuitChanges.feed(copy).unsetSpareWayBehind();
            }
            case CONSUMER_UNIT -> {
                CircuitChanges.feed(copy).setMainSwitch(Current.ofSi(NEW_SWITCH_A));
                CircuitChanges.feed(copy).setAssemblyFaultRating(Current.ofSi(rules.number("assembly.new")));
            }
            default -> {}
        }
    }

    /** In its present way it lies behind what it lay behind; anywhere else it is relieved of that. */
    private void upstream(Circuit circuit) {
        ResidualDevice present = circuit.getRcd();
        boolean shared = present != null
                && present.isSetKind()
                && present.getKind() == RcdKind.RCCB
                && !(present.isSetScope() && present.getScope() == RcdScope.CIRCUIT);
        switch (placement) {
            case IN_PLACE -> {
                if (combined && shared) {
                    circuit.setUpstreamRcd(ahead(present));
                }
            }
            case DELAYED_MAIN -> circuit.setUpstreamRcd(delayed(circuit));
            default -> circuit.setUpstreamRcd(null);
        }
    }

    private static UpstreamRcd ahead(ResidualDevice present) {
        UpstreamRcd upstream = SurveyFactory.eINSTANCE.createUpstreamRcd();
        upstream.setResidual(present.getResidual());
        upstream.setRating(present.getRating());
        upstream.setLoad(present.getLoad());
        upstream.setTimeDelayed(present.getTimeDelayed());
        if (present.isSetScope()) {
            upstream.setScope(present.getScope());
        }
        return upstream;
    }

    private static UpstreamRcd delayed(Circuit circuit) {
        ResidualDevice present = circuit.getRcd();
        UpstreamRcd before = circuit.getUpstreamRcd();
        UpstreamRcd upstream = SurveyFactory.eINSTANCE.createUpstreamRcd();
        upstream.setResidual(Current.ofSi(DELAYED_A));
        upstream.setRating(Current.ofSi(NEW_SWITCH_A));
        upstream.setLoad(before != null ? before.getLoad() : present == null ? null : present.getLoad());
        upstream.setTimeDelayed(true);
        upstream.setScope(RcdScope.HOUSE);
        return upstream;
    }

    private void replace(Survey copy) {
        ProtectiveDevice device = CircuitChanges.device(copy);
        device.setKind(kind.key());
        device.setRating(Current.ofSi(ratingA));
        device.setBreakingCapacity(Current.ofSi(rules.number("device.new.breaking")));
        OptionalDouble energy = rules.devices().letThroughA2s(kind.key(), ratingA);
        device.setLetThrough(energy.isPresent() ? LetThrough.ofSi(energy.getAsDouble()) : null);
        CircuitChanges.feed(copy).setDeviceApproved(true);
        if (combined) {
            CircuitChanges.circuit(copy).setRcd(residual());
        }
    }

    private ResidualDevice residual() {
        ResidualDevice rcd = SurveyFactory.eINSTANCE.createResidualDevice();
        rcd.setKind(RcdKind.RCBO);
        rcd.setType(TYPE);
        rcd.setResidual(Current.ofSi(rules.number("rcd.residual")));
        rcd.setRating(Current.ofSi(ratingA));
        rcd.setScope(RcdScope.CIRCUIT);
        return rcd;
    }
}
