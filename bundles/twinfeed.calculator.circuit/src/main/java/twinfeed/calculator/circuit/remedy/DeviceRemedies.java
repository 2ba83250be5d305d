// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import twinfeed.calculator.Phrase;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.CodeNumbers;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.ShowerLoad;
import twinfeed.calculator.circuit.survey.SiValues;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.RcdScope;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Current;
import twinfeed.units.LetThrough;

/**
 * Remedies on the protective device. The kind that is there is kept where it can be; a fuse goes together with its fuse board. Only
 * the smallest ratings that carry the heater are offered: a larger one asks more of cable, loop and isolator and gives nothing.
 */
public final class DeviceRemedies {
    /** The two smallest: the smallest alone may be a rating that is hard to get. */
    private static final int RATINGS = 2;

    private static final String TYPE = "A";

    /** Main switch of a new consumer unit, A (common practice). */
    private static final double NEW_SWITCH_A = 100;

    private final CircuitSurvey survey;
    private final DeviceKind usual;

    DeviceRemedies(CircuitSurvey survey) {
        this.survey = survey;
        RuleSet rules = survey.rules();
        String key = rules.text("device.new.kind");
        this.usual = rules.devices()
                .find(key)
                .orElseThrow(() -> new IllegalArgumentException(
                        "rule set " + rules.id() + ": device.new.kind " + key + " is not in devices.csv"));
    }

    /** Devices of the ratings that suit the heater, other than the one that is there. */
    List<Remedy> forLoad(ShowerCase shower) {
        return upTo(shower, Double.MAX_VALUE);
    }

    /** Those that ask less of the cable than the present one of a rating, A: smaller ones, or as large ones for a rewirable fuse. */
    List<Remedy> forCable(ShowerCase shower, double ratingA) {
        return upTo(shower, survey.run().deviceFactor() < 1 ? ratingA : Math.nextDown(ratingA));
    }

    /** Those of at most a rating, A. */
    List<Remedy> upTo(ShowerCase shower, double mostA) {
        List<Remedy> remedies = new ArrayList<>();
        for (double ratingA : ratings(shower)) {
            if (ratingA <= mostA) {
                add(remedies, ratingA);
            }
        }
        return remedies;
    }

    private void add(List<Remedy> remedies, double ratingA) {
        if (keepsBreaker() && !same(ratingA)) {
            remedies.add(device(ratingA, false));
        }
        if (!(survey.residual().kind() == RcdKind.RCBO && same(ratingA))) {
            remedies.add(device(ratingA, true));
        }
    }

    /** What disconnects at a higher loop impedance: residual-current protection, or a smaller or quicker device. */
    List<Remedy> residualOrUpTo(ShowerCase shower, double mostA) {
        List<Remedy> remedies = new ArrayList<>(upTo(shower, mostA));
        for (Remedy each : combined(shower)) {
            if (remedies.stream().noneMatch(known -> known.id().equals(each.id()))) {
                remedies.add(each);
            }
        }
        return remedies;
    }

    /** Devices with residual-current protection of their own, of the present rating first. */
    List<Remedy> combined(ShowerCase shower) {
        List<Remedy> remedies = new ArrayList<>();
        Double presentA = survey.device().ratingA();
        List<Double> ratings = ratings(shower);
        ShowerLoad load = shower.load();
        if (presentA != null
                && load != null
                && presentA >= load.designA()
                && usual.ratings().contains(presentA)
                && !ratings.contains(presentA)) {
            remedies.add(device(presentA, true));
        }
        ratings.forEach(ratingA -> remedies.add(device(ratingA, true)));
        return remedies;
    }

    /** Devices of an approved type, of the present rating too. */
    List<Remedy> approved(ShowerCase shower) {
        List<Remedy> remedies = new ArrayList<>();
        for (double ratingA : ratings(shower)) {
            if (keepsBreaker()) {
                remedies.add(device(ratingA, false));
            }
            remedies.add(device(ratingA, true));
        }
        return remedies;
    }

    /** A breaker may stay a breaker where a residual-current device protects it already. */
    private boolean keepsBreaker() {
        return survey.residual().kind() == RcdKind.RCCB && !survey.device().family(DeviceKind.Family.FUSE);
    }

    private boolean same(double ratingA) {
        return Objects.equals(survey.device().ratingA(), ratingA)
                && survey.device().kind() != null
                && Objects.equals(survey.device().kind().multiple(), usual.multiple());
    }

    /** The ratings that are offered, A. */
    List<Double> ratings(ShowerCase shower) {
        ShowerLoad load = shower.load();
        Double mostA = SiValues.of(shower.heater().getMaximumDevice());
        if (load == null) {
            return List.of();
        }
        return usual.ratings().stream()
                .filter(ratingA -> ratingA >= load.designA() && (mostA == null || ratingA <= mostA))
                .limit(RATINGS)
                .toList();
    }

    private Remedy device(double ratingA, boolean combined) {
        boolean board = survey.device().family(DeviceKind.Family.FUSE);
        String rating = CodeNumbers.number(ratingA);
        String code = (combined ? "rcbo-" : "breaker-") + rating;
        List<Remedy.Item> items = new ArrayList<>();
        if (board) {
            items.add(Remedy.Item.of("consumer-unit", 1));
            items.add(Remedy.Item.of("notification", 1));
        }
        items.add(Remedy.Item.of(code, 1));
        items.add(Remedy.Item.of("task-change-device", 1));
        RuleSet rules = survey.rules();
        DeviceKind kind = usual;
        return new Remedy(
                board ? "consumer-unit-" + code : "device-" + code,
                board ? "consumer-unit" : "device",
                Map.of(
                        "rating",
                        rating,
                        "device",
                        Phrase.of(code.startsWith("rcbo") ? "device.rcbo" : "device.breaker")),
                items,
                false,
                0,
                copy -> {
                    replace(copy, rules, kind, ratingA, combined);
                    if (board) {
                        CircuitChanges.feed(copy).setMainSwitch(Current.ofSi(NEW_SWITCH_A));
                    }
                });
    }

    private static void replace(Survey copy, RuleSet rules, DeviceKind kind, double ratingA, boolean combined) {
        ProtectiveDevice device = CircuitChanges.device(copy);
        device.setKind(kind.key());
        device.setRating(Current.ofSi(ratingA));
        device.setBreakingCapacity(Current.ofSi(rules.number("device.new.breaking")));
        OptionalDouble energy = rules.devices().letThroughA2s(kind.key(), ratingA);
        device.setLetThrough(energy.isPresent() ? LetThrough.ofSi(energy.getAsDouble()) : null);
        CircuitChanges.feed(copy).setDeviceApproved(true);
        if (combined) {
            CircuitChanges.circuit(copy).setRcd(residual(rules, ratingA));
        }
    }

    private static ResidualDevice residual(RuleSet rules, double ratingA) {
        ResidualDevice rcd = SurveyFactory.eINSTANCE.createResidualDevice();
        rcd.setKind(RcdKind.RCBO);
        rcd.setType(TYPE);
        rcd.setResidual(Current.ofSi(rules.number("rcd.residual")));
        rcd.setRating(Current.ofSi(ratingA));
        rcd.setScope(RcdScope.CIRCUIT);
        return rcd;
    }
}
