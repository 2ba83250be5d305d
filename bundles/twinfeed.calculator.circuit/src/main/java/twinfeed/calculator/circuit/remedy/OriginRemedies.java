// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.remedy;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.CodeNumbers;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.ShowerLoad;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.IsolatorCondition;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Current;
import twinfeed.units.Resistance;

/** Remedies on isolator, tails, earthing and consumer unit. */
public final class OriginRemedies {
    /** Ratings in which local double-pole isolators are sold, A (common practice). */
    private static final List<Double> ISOLATORS = List.of(45.0, 50.0);

    private static final double TAILS_MM2 = 25;
    private static final double EARTHING_MM2 = 16;
    private static final double BONDING_MM2 = 10;

    /** How long a network operator takes to come and look, days: judgement; a supply that is dangerous is seen sooner. */
    private static final int OPERATOR_DAYS = 7;

    private final CircuitSurvey survey;

    OriginRemedies(CircuitSurvey survey) {
        this.survey = survey;
    }

    private static Remedy work(String id, String kind, Map<String, Object> arguments, Consumer<Survey> edit) {
        return new Remedy(id, kind, arguments, List.of(Remedy.Item.of(id, 1)), false, 0, edit);
    }

    /** Isolators for the heater that are better than the present one. */
    List<Remedy> isolators(ShowerCase shower) {
        ShowerLoad load = shower.load();
        Double presentA = survey.isolator().ratingA();
        boolean scorched = survey.isolator().condition() == IsolatorCondition.SCORCHED;
        return newIsolators(load, scorched || presentA == null ? 0 : presentA);
    }

    /** Isolators for the heater, of the present one's rating too: a new one is not worn, and is chosen with terminals for the cable. */
    List<Remedy> renewedIsolators(ShowerCase shower) {
        return newIsolators(shower.load(), 0);
    }

    private static List<Remedy> newIsolators(@Nullable ShowerLoad load, double aboveA) {
        return ISOLATORS.stream()
                .filter(ratingA -> load != null && ratingA >= load.designA() && ratingA > aboveA)
                .map(OriginRemedies::isolator)
                .toList();
    }

    private static Remedy isolator(double ratingA) {
        String id = "isolator-" + CodeNumbers.number(ratingA);
        return new Remedy(
                id,
                "isolator",
                Map.of("rating", CodeNumbers.number(ratingA)),
                List.of(Remedy.Item.of(id, 1), Remedy.Item.of("task-change-isolator", 1)),
                false,
                0,
                copy -> {
                    Isolator isolator = CircuitChanges.isolator(copy);
                    if ("none".equals(isolator.getKind())) {
                        isolator.setKind(null);
                    }
                    isolator.setRating(Current.ofSi(ratingA));
                    isolator.setNamedDevice(null);
                    isolator.setCondition(IsolatorCondition.SOUND);
                    isolator.setMaximumConductor(null);
                });
    }

    List<Remedy> tails(double neededMm2) {
        return LimitType.exceeds(neededMm2, TAILS_MM2)
                ? List.of()
                : List.of(work("tails-25", "tails", Map.of("size", "25"), copy -> CircuitChanges.feed(copy)
                        .setTails(CircuitChanges.area(TAILS_MM2))));
    }

    List<Remedy> earthing(double neededMm2) {
        return LimitType.exceeds(neededMm2, EARTHING_MM2)
                ? List.of()
                : List.of(work("earthing-16", "earthing", Map.of("size", "16"), copy -> {
                    CircuitChanges.feed(copy).setEarthingConductor(CircuitChanges.area(EARTHING_MM2));
                    CircuitChanges.feed(copy).setHasEarthingConductor(null);
                }));
    }

    List<Remedy> bonding(double neededMm2) {
        return LimitType.exceeds(neededMm2, BONDING_MM2)
                ? List.of()
                : List.of(work("bonding-10", "bonding", Map.of("size", "10"), copy -> {
                    CircuitChanges.feed(copy).setMainBonding(CircuitChanges.area(BONDING_MM2));
                    CircuitChanges.feed(copy).setHasMainBonding(null);
                }));
    }

    List<Remedy> moveIsolator() {
        return List.of(work("task-move-isolator", "move-isolator", Map.of(), copy -> {
            if (copy.getSite() == null) {
                copy.setSite(SurveyFactory.eINSTANCE.createSite());
            }
            copy.getSite().setOutsideZones(true);
        }));
    }

    /** The unit is disconnected and the circuit tested again by itself: what it then shows is not known before. */
    List<Remedy> testApart() {
        return List.of(work("task-test-apart", "test-apart", Map.of(), copy -> {
            CircuitChanges.circuit(copy).setInsulationResistance(null);
            CircuitChanges.circuit(copy).setUnitDisconnected(true);
        }));
    }

    /** The joint is found and remade, and the path is measured again. */
    List<Remedy> earthPath() {
        return List.of(work("task-trace-joint", "trace-joint", Map.of(), copy -> {
            CircuitChanges.circuit(copy).setMeasuredLoop(null);
            CircuitChanges.circuit(copy).setMeasuredLine(null);
        }));
    }

    /** The operator finds and mends the fault of the supply: the loop is measured again after that, and Ze is taken to be the largest usual one. */
    List<Remedy> supplyEarth(double usualOhm) {
        return List.of(new Remedy(
                "operator-earth",
                "operator-earth",
                Map.of("usual", usualOhm),
                List.of(Remedy.Item.of("operator-earth", 1)),
                true,
                OPERATOR_DAYS,
                copy -> {
                    CircuitChanges.feed(copy).setExternalLoop(Resistance.ofSi(usualOhm));
                    CircuitChanges.circuit(copy).setMeasuredLoop(null);
                }));
    }

    /** What it reaches is known only once it is driven and measured; the stable limit is what it is driven to. */
    List<Remedy> electrode() {
        double targetOhm = survey.rules().number("electrode.stable");
        return List.of(work("electrode", "electrode", Map.of("target", targetOhm), copy -> CircuitChanges.feed(copy)
                .setElectrode(Resistance.ofSi(targetOhm))));
    }

    List<Remedy> extraWay() {
        return List.of(work("extra-way", "extra-way", Map.of(), copy -> CircuitChanges.feed(copy)
                .setSpareWay(true)));
    }
}
