// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.faults;

import java.util.stream.IntStream;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.inference.ObservationAnswer;
import twinfeed.diagnosis.inference.Posterior;
import twinfeed.diagnosis.reading.ElementAssessment;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.usual.UsualValues;

/** Workings of the faults calculator. */
final class FaultsWorking {
    private static final String SURVEY = "survey";
    private static final String JUDGEMENT = "judgement";
    private static final String MAKER = "maker's data";

    private FaultsWorking() {}

    /** Bayes' rule for the likeliest part; the evidence is the sum of prior times likelihoods over all parts. */
    static Working posterior(FaultData data, Posterior posterior) {
        String part = posterior.first().part();
        Working.Builder working = Working.start().input("prior", "prior", data.prior(part), "", JUDGEMENT);
        StringBuilder product = new StringBuilder("prior");
        int number = 0;
        double evidence = 0;
        for (String each : data.partKeys()) {
            evidence += data.prior(each) * likelihood(data, posterior, each);
        }
        for (ObservationAnswer answer : posterior.answers()) {
            String symbol = "L" + ++number;
            double chance = data.observation(answer.key())
                    .map(each -> each.chance(part, answer.yes()))
                    .orElse(1.0);
            working.input(symbol, "likelihood", chance, "", JUDGEMENT + ", " + answer.key());
            product.append(" * ").append(symbol);
        }
        working.step("joint", "joint", product.toString(), "", "");
        working.input("evidence", "evidence", evidence, "", "");
        return working.step("chance", "chance", "joint / evidence * 100", "%", "Bayes' rule")
                .build();
    }

    private static double likelihood(FaultData data, Posterior posterior, String part) {
        double product = 1;
        for (ObservationAnswer answer : posterior.answers()) {
            product *= data.observation(answer.key())
                    .map(each -> each.chance(part, answer.yes()))
                    .orElse(1.0);
        }
        return product;
    }

    /** Least power that sound elements give at the rated voltage, the meter's error counted, W. */
    static double leastW(ElementAssessment elements, Heater heater, FaultData data) {
        double ratedOhm = elements.ratedV() * elements.ratedV() / elements.ratedW();
        double mostOhm = ElementAssessment.sound(ratedOhm, heater, data).mostOhm();
        return elements.ratedV() * elements.ratedV() / mostOhm;
    }

    /** All conducting elements in parallel at the rated voltage, after the least power of sound ones. */
    static Working elements(ElementAssessment elements, Heater heater, FaultData data) {
        double[] conducting = elements.conductingOhm();
        if (conducting.length == 0) {
            return Working.start().input("P", "elementsPower", 0, "kW", SURVEY).build();
        }
        Working.Builder working = Working.start()
                .input("Pr", "ratedPower", elements.ratedW(), "W", MAKER, Origin.heater(heater, "power"))
                .input("Ur", "ratedVoltage", elements.ratedV(), "V", MAKER, Origin.heater(heater, "voltage"))
                .step("R0", "ratedResistance", "Ur^2 / Pr", "Ω", "Ohm's law")
                .input("td", "toleranceDown", UsualValues.powerDown(heater), "", "EN 60335-1")
                .input("em", "meterRelative", data.limit("meterRelative"), "", JUDGEMENT)
                .input("ea", "meterAbsolute", data.limit("meterAbsolute"), "Ω", JUDGEMENT)
                .step("Rm", "mostResistance", "R0 / (1 - td) + em * R0 + ea", "Ω", "")
                .step(LimitType.SYMBOL, "leastPower", "Ur^2 / Rm / 1000", "kW", "");
        for (int i = 0; i < conducting.length; i++) {
            working.input("R" + (i + 1), "element", conducting[i], "Ω", SURVEY);
        }
        String sum = String.join(
                " + ",
                IntStream.rangeClosed(1, conducting.length)
                        .mapToObj(i -> "1 / R" + i)
                        .toList());
        working.step("R", "parallel", "1 / (" + sum + ")", "Ω", "Ohm's law");
        return working.step("P", "elementsPower", "Ur^2 / R / 1000", "kW", "Ohm's law")
                .build();
    }

    /** Difference of the coil from its rating. */
    static Working coil(double readingOhm, double ratedOhm) {
        return Working.start()
                .input("Rc", "coil", readingOhm, "Ω", SURVEY)
                .input("Rr", "coilRated", ratedOhm, "Ω", "maker's data")
                .step("differs", "differs", "max(Rc / Rr - 1, 1 - Rc / Rr) * 100", "%", "")
                .build();
    }
}
