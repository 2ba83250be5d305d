// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.inference.Diagnosis;
import twinfeed.diagnosis.reading.AcceptanceValues;
import twinfeed.diagnosis.reading.CoilAssessment;
import twinfeed.diagnosis.reading.ElementAssessment;
import twinfeed.diagnosis.reading.ElementState;
import twinfeed.diagnosis.reading.ResistanceBand;
import twinfeed.diagnosis.text.FaultTexts;
import twinfeed.engineering.water.Heat;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.survey.Survey;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;
import twinfeed.units.Quantity;

/** The readings of the survey, each beside what a sound part reads. */
final class FaultReadings {
    private final Diagnosis diagnosis;
    private final Survey survey;
    private final Heater heater;
    private final FaultTexts words;
    private final List<FaultSheet.Reading> lines = new ArrayList<>();

    private FaultReadings(Diagnosis diagnosis, Survey survey, Heater heater, FaultTexts words) {
        this.diagnosis = diagnosis;
        this.survey = survey;
        this.heater = heater;
        this.words = words;
    }

    static List<FaultSheet.Reading> of(Diagnosis diagnosis, Survey survey, Heater heater, FaultTexts words) {
        FaultReadings readings = new FaultReadings(diagnosis, survey, heater, words);
        readings.elements();
        readings.coil();
        FaultFinding finding = survey.getFaultFinding();
        if (finding != null) {
            readings.continuity("reading.cutOut", finding.getCutOutCloses());
            readings.continuity("reading.switch", finding.getSwitchCloses());
            readings.flows(finding);
            readings.pressure(finding);
            readings.shutOff(finding);
        }
        return readings.lines;
    }

    private void elements() {
        for (ElementState each : diagnosis.evidence().elements().states()) {
            add(
                    words.format("reading.element", Map.of("name", each.name())),
                    resistance(each.readingOhm()),
                    band(each.band()),
                    each.faulty() ? Boolean.FALSE : each.sound() ? Boolean.TRUE : null);
        }
        if (diagnosis.evidence().elements().states().size() > 1
                && diagnosis.evidence().elements().conductingOhm().length > 0) {
            parallel(diagnosis.evidence().elements());
        }
    }

    private void parallel(ElementAssessment elements) {
        double ohm = Heat.parallelResistance(elements.conductingOhm());
        ResistanceBand band = elements.ratedW() > 0 && elements.ratedV() > 0
                ? ElementAssessment.sound(
                        Heat.elementResistance(elements.ratedW(), elements.ratedV()), heater, diagnosis.data())
                : null;
        add(
                words.get("reading.parallel"),
                words.format("value.power", Map.of("ohm", ohm(ohm), "power", Kind.POWER.amount(elements.powerW()))),
                band(band),
                band == null ? null : Boolean.valueOf(band.holds(ohm)));
    }

    private void coil() {
        CoilAssessment coil = diagnosis.evidence().coil();
        if (coil.measured()) {
            add(
                    words.get("reading.coil"),
                    resistance(coil.readingOhm()),
                    band(coil.band()),
                    coil.faulty() ? Boolean.FALSE : coil.sound() ? Boolean.TRUE : null);
        }
    }

    private void continuity(String key, @Nullable Boolean closes) {
        if (closes != null) {
            add(
                    words.get(key),
                    words.get(closes ? "value.continuity" : "value.open"),
                    words.get("value.continuity"),
                    closes);
        }
    }

    private void flows(FaultFinding finding) {
        if (finding.getFlowHottest() == null || finding.getFlowColdest() == null) {
            return;
        }
        double ratio = diagnosis.data().limit("flowRatio");
        add(
                words.get("reading.flows"),
                text(finding.getFlowHottest()) + ", " + text(finding.getFlowColdest()),
                words.format("value.ratio", Map.of("ratio", ratio)),
                finding.getFlowColdest().si()
                        >= ratio * finding.getFlowHottest().si());
    }

    private void pressure(FaultFinding finding) {
        if (finding.getRunningPressure() == null) {
            return;
        }
        Quantity least = heater.getMinimumRunningPressure();
        add(
                words.get("reading.pressure"),
                text(finding.getRunningPressure()),
                least == null ? "" : words.format("value.least", Map.of("least", text(least))),
                least == null
                        ? null
                        : Boolean.valueOf(finding.getRunningPressure().si() >= least.si()));
    }

    private void shutOff(FaultFinding finding) {
        if (finding.getShutOffTime() != null) {
            add(words.get("reading.shutOff"), text(finding.getShutOffTime()), words.get("value.runsOn"), Boolean.FALSE);
        }
    }

    /** What to measure when the repair is done. */
    static List<FaultSheet.Expected> after(Diagnosis diagnosis, Survey survey, Heater heater, FaultTexts words) {
        FaultReadings readings = new FaultReadings(diagnosis, survey, heater, words);
        List<FaultSheet.Expected> all = new ArrayList<>();
        readings.expected(all);
        return all;
    }

    private void expected(List<FaultSheet.Expected> all) {
        expect(all, "after.earth", words.get("value.continuity"));
        expect(all, "after.insulation", words.get("value.insulation"));
        if (heater.getPower() != null && heater.getVoltage() != null) {
            AcceptanceValues acceptance = AcceptanceValues.of(survey, heater, diagnosis.data());
            expect(all, "after.resistance", band(acceptance.parallel()));
            expect(
                    all,
                    "after.power",
                    words.format(
                            "value.powerBand",
                            Map.of(
                                    "least",
                                    Kind.POWER.amount(acceptance.leastW()),
                                    "most",
                                    Kind.POWER.amount(acceptance.mostW()),
                                    "voltage",
                                    acceptance.voltageV())));
            if (acceptance.flowM3PerS() > 0) {
                expect(
                        all,
                        "after.flow",
                        words.format(
                                "value.flow",
                                Map.of(
                                        "flow",
                                        Kind.FLOW.amount(acceptance.flowM3PerS()),
                                        "outlet",
                                        acceptance.outletC(),
                                        "intake",
                                        acceptance.intakeC())));
            }
        }
        ResistanceBand coil = CoilAssessment.of(null, heater, diagnosis.data()).band();
        if (coil != null) {
            expect(all, "after.coil", band(coil));
        }
        if (heater.getMinimumRunningPressure() != null) {
            expect(
                    all,
                    "after.pressure",
                    words.format("value.least", Map.of("least", text(heater.getMinimumRunningPressure()))));
        }
        expect(all, "after.function", words.get("value.function"));
    }

    private void expect(List<FaultSheet.Expected> all, String key, String value) {
        all.add(new FaultSheet.Expected(words.get(key), value));
    }

    private void add(String title, String value, String expected, @Nullable Boolean sound) {
        lines.add(new FaultSheet.Reading(title, value, expected, sound));
    }

    private String resistance(@Nullable Double ohm) {
        return ohm == null ? words.get("value.open") : ohm(ohm);
    }

    private String ohm(double ohm) {
        return Quantities.format(Kind.RESISTANCE, ohm, 4, words.locale());
    }

    private String band(@Nullable ResistanceBand band) {
        return band == null
                ? ""
                : words.format("value.band", Map.of("least", ohm(band.leastOhm()), "most", ohm(band.mostOhm())));
    }

    private String text(Quantity quantity) {
        return quantity.toString(words.locale());
    }
}
