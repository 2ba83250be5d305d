// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.ObservationStage;
import twinfeed.diagnosis.isolation.IsolationRecord;
import twinfeed.diagnosis.reading.CoilAssessment;
import twinfeed.diagnosis.reading.ElementAssessment;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.survey.IsolatorCondition;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.Symptom;

/**
 * Everything that a survey says about the fault, as answers to observations. A reading overrules what was said, for it is
 * judged by calculation.
 *
 * @param answers the answers, in the order of the data
 * @param asked keys that were asked, those without an answer included
 * @param unknown keys that the survey names and the data do not know
 * @param elements the elements, judged
 * @param coil the coil, judged
 * @param isolation the isolation record
 * @param electronics whether the unit has, or may have, a control board
 */
public record Evidence(
        List<ObservationAnswer> answers,
        Set<String> asked,
        List<String> unknown,
        ElementAssessment elements,
        CoilAssessment coil,
        IsolationRecord isolation,
        boolean electronics) {
    /** Observations that say that a protective device trips. */
    private static final List<String> TRIPS = List.of("rcdTrips", "overcurrentTrips", "breakerTrips", "deviceFoundOff");

    /** Observations of water where current is. */
    private static final List<String> WATER_INSIDE = List.of("leakFromCase", "waterInCase");

    /** Observations of the insulation. */
    private static final List<String> INSULATION = List.of("insulationLow", "circuitInsulationLow");

    public Evidence {
        answers = List.copyOf(answers);
        asked = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(asked));
        unknown = List.copyOf(unknown);
    }

    /** Collects it. */
    public static Evidence of(Survey survey, Heater heater, SupplyState feeds, FaultData data) {
        @Nullable FaultFinding finding = survey.getFaultFinding();
        ElementAssessment elements = ElementAssessment.of(finding, heater, data);
        CoilAssessment coil = CoilAssessment.of(finding, heater, data);
        Map<String, ObservationAnswer> found = new LinkedHashMap<>();
        Set<String> asked = new LinkedHashSet<>();
        List<String> unknown = new ArrayList<>();
        for (Symptom symptom : survey.getSymptoms()) {
            said(symptom, data, found, asked, unknown);
        }
        Read read = new Read(found);
        read.give(
                "elementOpen",
                elements.faulty() ? Optional.of(true) : elements.sound() ? Optional.of(false) : Optional.empty());
        read.give(
                "coilOutOfBand",
                coil.faulty() ? Optional.of(true) : coil.sound() ? Optional.of(false) : Optional.empty());
        read.isolator(survey);
        read.insulation(survey, data);
        if (finding != null) {
            read.readings(finding, heater, data);
        }
        asked.addAll(found.keySet());
        feeds.marginFails().ifPresent(yes -> read.put("feedMarginFails", yes, ObservationAnswer.Origin.FEED));
        feeds.voltageLow().ifPresent(yes -> read.put("feedVoltageLow", yes, ObservationAnswer.Origin.FEED));
        List<ObservationAnswer> answers = data.observations().keySet().stream()
                .flatMap(key -> Optional.ofNullable(found.get(key)).stream())
                .toList();
        boolean suspected = Optional.ofNullable(found.get("isolatorHot"))
                .map(ObservationAnswer::yes)
                .orElse(false);
        return new Evidence(
                answers,
                asked,
                unknown,
                elements,
                coil,
                IsolationRecord.of(finding, suspected),
                !Boolean.FALSE.equals(heater.getElectronics()));
    }

    private static void said(
            Symptom symptom,
            FaultData data,
            Map<String, ObservationAnswer> found,
            Set<String> asked,
            List<String> unknown) {
        String key = symptom.getKey();
        if (key == null) {
            return;
        }
        if (data.observation(key).isEmpty()) {
            unknown.add(key);
            return;
        }
        asked.add(key);
        FaultAnswer answer = symptom.isSetAnswer() ? symptom.getAnswer() : FaultAnswer.YES;
        if (answer != FaultAnswer.UNKNOWN) {
            found.put(key, new ObservationAnswer(key, answer == FaultAnswer.YES, ObservationAnswer.Origin.SAID));
        }
    }

    private Optional<Boolean> answer(String key) {
        return answers.stream()
                .filter(each -> each.key().equals(key))
                .map(ObservationAnswer::yes)
                .findFirst();
    }

    /**
     * Whether the unit may be switched on to observe something: not while it is isolated, not with low insulation, not with water in or
     * from its case, and not where a protective device trips, or was found off, and the insulation of the unit was not tested.
     */
    public boolean mayBePowered() {
        boolean trips = TRIPS.stream().anyMatch(key -> answer(key).orElse(false));
        boolean low = answer("insulationLow").orElse(false)
                || answer("circuitInsulationLow").orElse(false);
        boolean wet = WATER_INSIDE.stream().anyMatch(key -> answer(key).orElse(false));
        return !isolation.begun()
                && !low
                && !wet
                && (!trips || answer("insulationLow").isPresent());
    }

    /**
     * Whether there is anything from which a fault could be inferred; the supplies alone are no fault of the unit, and sound insulation,
     * which is measured in every survey, is no sign of one.
     */
    public boolean any() {
        return answers.stream()
                .anyMatch(answer -> answer.origin() != ObservationAnswer.Origin.FEED
                        && (answer.yes() || !testedAtTheBoard(answer)));
    }

    /** The insulation of a circuit is tested from the board; that the unit hung on it or not tells nothing of its cover. */
    private static boolean testedAtTheBoard(ObservationAnswer answer) {
        return answer.origin() == ObservationAnswer.Origin.READING && INSULATION.contains(answer.key());
    }

    /** Whether somebody reported something, an answer "unknown" included, or measured something. */
    public boolean begun() {
        boolean somethingAsked = asked.stream().anyMatch(key -> answers.stream()
                .noneMatch(answer -> answer.key().equals(key) && testedAtTheBoard(answer)));
        return any() || somethingAsked || !unknown.isEmpty();
    }

    /** The answers that were found with the cover off. */
    public List<String> underCover(FaultData data) {
        return answers.stream()
                .filter(answer -> !testedAtTheBoard(answer))
                .map(ObservationAnswer::key)
                .filter(key -> data.observation(key)
                        .map(each -> each.place() == ObservationStage.COVER)
                        .orElse(false))
                .toList();
    }

    /** Whether a reading was taken under the cover without a complete isolation record. */
    public boolean unsafeReading(FaultData data) {
        return (!underCover(data).isEmpty() || elements.measured() || coil.measured()) && !isolation.complete();
    }

    /** Puts readings in as answers. */
    private record Read(Map<String, ObservationAnswer> found) {
        void put(String key, boolean yes, ObservationAnswer.Origin origin) {
            found.put(key, new ObservationAnswer(key, yes, origin));
        }

        void give(String key, Optional<Boolean> yes) {
            yes.ifPresent(answer -> put(key, answer, ObservationAnswer.Origin.READING));
        }

        void isolator(Survey survey) {
            if (survey.getElectricity() != null
                    && survey.getElectricity().getCircuit() != null
                    && survey.getElectricity().getCircuit().getIsolator() != null
                    && survey.getElectricity().getCircuit().getIsolator().isSetCondition()
                    && survey.getElectricity().getCircuit().getIsolator().getCondition()
                            == IsolatorCondition.SCORCHED) {
                give("isolatorHot", Optional.of(true));
            }
        }

        /** A reading with the unit disconnected is the circuit's; else it is of both together. */
        void insulation(Survey survey, FaultData data) {
            if (survey.getElectricity() == null
                    || survey.getElectricity().getCircuit() == null
                    || survey.getElectricity().getCircuit().getInsulationResistance() == null) {
                return;
            }
            boolean low = survey.getElectricity()
                            .getCircuit()
                            .getInsulationResistance()
                            .si()
                    < data.limit("insulationLeast");
            boolean alone =
                    Boolean.TRUE.equals(survey.getElectricity().getCircuit().getUnitDisconnected());
            give(alone ? "circuitInsulationLow" : "insulationLow", Optional.of(low));
        }

        void readings(FaultFinding finding, Heater heater, FaultData data) {
            give("cutOutOpen", Optional.ofNullable(finding.getCutOutCloses()).map(closes -> !closes));
            give("switchOpen", Optional.ofNullable(finding.getSwitchCloses()).map(closes -> !closes));
            if (finding.getFlowHottest() != null && finding.getFlowColdest() != null) {
                double least = finding.getFlowHottest().si() * data.limit("flowRatio");
                give(
                        "littleFlowDifference",
                        Optional.of(finding.getFlowColdest().si() < least));
            }
            if (finding.getRunningPressure() != null && heater.getMinimumRunningPressure() != null) {
                double least = heater.getMinimumRunningPressure().si();
                give(
                        "runningPressureLow",
                        Optional.of(finding.getRunningPressure().si() < least));
            }
            if (finding.getShutOffTime() != null) {
                double seconds = finding.getShutOffTime().si();
                give(
                        "shutsOffAndReturns",
                        Optional.of(seconds >= data.limit("shutOffLeast") && seconds <= data.limit("shutOffMost")));
            }
        }
    }
}
