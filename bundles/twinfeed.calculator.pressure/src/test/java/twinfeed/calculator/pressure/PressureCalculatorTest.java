// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Intake;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.pressure.hydraulics.FeedHydraulics;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.SurveyedTap;
import twinfeed.calculator.sampling.Uncertainty;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Element;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.units.Flow;
import twinfeed.units.Length;
import twinfeed.units.Power;
import twinfeed.units.Pressure;
import twinfeed.units.Temperature;
import twinfeed.units.TemperatureDifference;

class PressureCalculatorTest {
    private static final Consumer<Survey> AS_IT_IS = survey -> {};
    private static final Consumer<Heater> THE_SAMPLE = heater -> {};

    /** Closed form: 3.0 - 1.4 (9/15)^1.85 = 2.456 bar. */
    @Test
    void nothingUpstreamOfTheGaugeIsCounted() {
        Finding running = Houses.finding(
                "pressure.running",
                survey -> {
                    Houses.supply(survey, "3.0 bar", "1.6 bar", "15 L/min");
                    Houses.gaugeAtHeater(survey);
                },
                heater -> heater.setRunningPressureFlow(Flow.valueOf("9 L/min")));
        assertEquals(2.456, Fixtures.value(running), 0.001);
        assertEquals(Outcome.PASSES, running.outcome());
    }

    /** Half a metre of water is 0.049 bar. */
    @Test
    void theGaugesHeightIsAdded() {
        double level = Fixtures.value(Houses.finding("pressure.running", Houses::gaugeAtHeater, THE_SAMPLE));
        double above = Fixtures.value(Houses.finding(
                "pressure.running",
                survey -> {
                    Houses.gaugeAtHeater(survey);
                    survey.getWater().getTest().setGaugeHeight(Length.valueOf("0.5 m"));
                },
                THE_SAMPLE));
        assertEquals(0.049, above - level, 0.0002);
    }

    /**
     * Judging by static pressure misleads: 3.0 bar that run at 1.6 bar with 15 L/min leave 0.98 bar at 18 L/min (closed form),
     * and 2.0 bar that hold 1.9 bar leave 1.86 bar.
     */
    @Test
    void staticPressureSaysLittle() {
        Consumer<Heater> large = heater -> heater.setRunningPressureFlow(Flow.valueOf("18 L/min"));
        Finding weak = Houses.finding(
                "pressure.running",
                survey -> {
                    Houses.supply(survey, "3.0 bar", "1.6 bar", "15 L/min");
                    Houses.gaugeAtHeater(survey);
                },
                large);
        Finding stiff = Houses.finding(
                "pressure.running",
                survey -> {
                    Houses.supply(survey, "2.0 bar", "1.9 bar", "15 L/min");
                    Houses.gaugeAtHeater(survey);
                },
                large);
        assertEquals(0.984, Fixtures.value(weak), 0.001);
        assertEquals(1.856, Fixtures.value(stiff), 0.001);
    }

    @Test
    void aTestThatCannotBeIsNamed() {
        Consumer<Survey> impossible = survey -> Houses.supply(survey, "2.0 bar", "2.3 bar", "12 L/min");
        Finding test = Houses.finding("pressure.test", impossible, THE_SAMPLE);
        assertEquals(Outcome.FAILS, test.outcome());
        assertEquals("refused", test.variant());
        Finding running = Houses.finding("pressure.running", impossible, THE_SAMPLE);
        assertEquals(Outcome.CANNOT_TELL, running.outcome());
        assertEquals(List.of("survey.water.test.runningPressure"), running.missing());
    }

    /** A running pressure that reaches the static one within the gauge's error is a stiff supply, not a slip. */
    @Test
    void aStiffSupplyIsGoodNews() {
        Survey survey = Samples.survey();
        Houses.supply(survey, "3.0 bar ± 0.05 bar", "2.97 bar ± 0.05 bar", "15 L/min");
        Houses.gaugeAtHeater(survey);
        Finding running = Uncertainty.plain(Houses.runner(), 1024, Uncertainty.SEED)
                .judge(survey, new Candidate(Samples.heater(), false))
                .finding("pressure.running")
                .orElseThrow();
        assertEquals(Outcome.PASSES, running.outcome());
        assertTrue(running.chance().passes() > 0.999);
        Finding level = Houses.finding(
                "pressure.running", house -> Houses.supply(house, "2.0 bar", "2.0 bar", "12 L/min"), THE_SAMPLE);
        assertEquals(Outcome.PASSES, level.outcome());
    }

    @Test
    void aTestWithoutFlowIsNamed() {
        Consumer<Survey> still = survey -> Houses.supply(survey, "3.0 bar", "2.0 bar", "0 L/min");
        assertEquals(
                List.of("survey.water.test.flow"),
                Houses.finding("pressure.test", still, THE_SAMPLE).missing());
        assertEquals(
                List.of("survey.water.test.flow"),
                Houses.finding("pressure.switch", still, THE_SAMPLE).missing());
    }

    /** Practice of NFPA 291: at least a tenth. A stiff supply is not rejected, only doubted. */
    @Test
    void aSmallDropIsDoubtedButServes() {
        Consumer<Survey> stiff = survey -> Houses.supply(survey, "3.0 bar", "2.85 bar", "12 L/min");
        Finding test = Houses.finding("pressure.test", stiff, THE_SAMPLE);
        assertEquals(Outcome.FAILS, test.outcome());
        assertFalse(test.rulesOut());
        assertEquals(5, Fixtures.value(test), 1e-9);
        assertEquals(
                Outcome.PASSES,
                Houses.finding("pressure.running", stiff, THE_SAMPLE).outcome());
    }

    /** 4 m and 0.3 m of water: 6.0 bar at the gauge are 5.64 bar at the heater. */
    @Test
    void tooHighAPressureGetsAReducingValve() {
        Survey survey = Samples.survey();
        Houses.supply(survey, "6.0 bar", "4.0 bar", "12 L/min");
        Heater heater = Samples.heater();
        heater.setMaximumStaticPressure(Pressure.valueOf("5 bar"));
        Finding high = Houses.finding(survey, heater, "pressure.static");
        assertEquals(Outcome.FAILS, high.outcome());
        assertEquals(6.0 - 3.7 * 0.0980665, Fixtures.value(high), 0.001);
        high.remedies().get(0).edit().accept(survey);
        assertEquals(
                Outcome.PASSES,
                Houses.finding(survey, heater, "pressure.static").outcome());
        assertEquals(
                Outcome.PASSES,
                Houses.finding(survey, heater, "pressure.running").outcome());
        assertEquals(
                Outcome.PASSES, Houses.finding(survey, heater, "pressure.test").outcome());
    }

    /** R_d Q^2 with 0.4 bar at 8 L/min; behind the throttle the smallest flow is the worst: winter, lowest voltage. */
    @Test
    void aSwitchBehindTheThrottleIsWeakestInWinter() {
        Finding margin = Houses.finding(
                "pressure.switch", AS_IT_IS, heater -> heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER));
        double flow = ((Number) margin.arguments().get("flow")).doubleValue();
        double empty = 0.4 * flow * flow / 64;
        assertEquals("heatingMake", margin.variant());
        assertEquals(empty, Fixtures.value(margin), 1e-9);
        Intake intake = margin.condition().intake();
        assertTrue(intake != null && intake.design());
        assertEquals(216.2, margin.condition().voltageV());
        assertEquals(Outcome.FAILS, margin.outcome());
        assertTrue(margin.rulesOut());
        assertTrue(margin.remedies().isEmpty(), "no work on the feed makes more warm water");
    }

    /** With the handset 0.3 m below the heater the hose pulls: 0.3 m of water less to stay closed. */
    @Test
    void aLowHandsetPullsTheSwitchOpen() {
        Finding margin = Houses.finding("pressure.switch", AS_IT_IS, heater -> {
            heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER);
            heater.setBreakPressure(Pressure.valueOf("0.29 bar"));
        });
        double flow = ((Number) margin.arguments().get("flow")).doubleValue();
        assertEquals("heatingBreak", margin.variant());
        assertEquals(0.4 * flow * flow / 64 - 0.3 * 0.0980665, Fixtures.value(margin), 0.0001);
        assertEquals(-0.3, step(margin, "z_h"), 1e-12);
        assertEquals(Fixtures.value(margin), step(margin, "p_sw"), 1e-12);
    }

    /** Ahead of the throttle the largest flow is the worst, and every open tap makes it worse. */
    @Test
    void aSwitchAheadOfTheThrottleIsWeakestWithTapsOpen() {
        Finding margin = Houses.finding("pressure.switch", AS_IT_IS, THE_SAMPLE);
        assertEquals(
                2,
                margin.condition().drawOff() == null
                        ? 0
                        : margin.condition().drawOff().open());
        assertEquals("inletTap", margin.variant());
        assertTrue(margin.remedies().stream().anyMatch(remedy -> remedy.id().equals("own-branch")));
        double alone = Fixtures.value(Houses.finding(
                "pressure.switch", survey -> survey.getWater().getDrawOffs().clear(), THE_SAMPLE));
        assertTrue(alone > Fixtures.value(margin));
    }

    @Test
    void anUnknownPlaceIsJudgedByTheWorse() {
        double inlet = Houses.finding("pressure.switch", AS_IT_IS, THE_SAMPLE)
                .printed()
                .margin();
        double heating = Houses.finding(
                        "pressure.switch", AS_IT_IS, heater -> heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER))
                .printed()
                .margin();
        Heater unknown = Samples.heater();
        unknown.unsetSwitchPlace();
        Finding margin = Houses.finding(Samples.survey(), unknown, "pressure.switch");
        assertEquals(Math.min(inlet, heating), margin.printed().margin(), 1e-12);
        assertTrue(Houses.assumptions(Samples.survey(), unknown).stream()
                .anyMatch(text ->
                        text.startsWith("It is not known where the pressure switch of \"Heater of the test\" is:")));
    }

    @Test
    void aFlowStandsInForThePressure() {
        Consumer<Heater> byFlow = heater -> heater.setMakePressure(null);
        Finding margin = Houses.finding("pressure.switch", AS_IT_IS, byFlow);
        assertEquals(Outcome.NOT_APPLICABLE, margin.outcome());
        Finding activation = Houses.finding("pressure.activation", AS_IT_IS, byFlow);
        assertEquals(Outcome.PASSES, activation.outcome());
        assertEquals(216.2, activation.condition().voltageV());
    }

    @Test
    void withNeitherOneCannotTell() {
        Finding margin = Houses.finding("pressure.switch", AS_IT_IS, heater -> {
            heater.setMakePressure(null);
            heater.setActivationFlow(null);
        });
        assertEquals(Outcome.CANNOT_TELL, margin.outcome());
        assertEquals(List.of("heater.makePressure"), margin.missing());
    }

    @Test
    void contradictingSwitchDataAreNamed() {
        Finding margin = Houses.finding(
                "pressure.switch", AS_IT_IS, heater -> heater.setBreakPressure(Pressure.valueOf("0.5 bar")));
        assertEquals(List.of("heater.breakPressure"), margin.missing());
    }

    @Test
    void aStrainerNobodyDescribedIsAnAssumption() {
        Heater heater = Samples.heater();
        heater.setInletLoss(null);
        assertTrue(Houses.assumptions(Samples.survey(), heater)
                .contains("Loss of strainer and solenoid valve of \"Heater of the test\" taken as 0.05 bar at 12 L/min"
                        + " (engineering judgement): its instructions do not say"));
    }

    @Test
    void aStifferSupplyLetsOthersDrawMore() {
        double weak = Fixtures.value(Houses.finding("pressure.dropOut", AS_IT_IS, THE_SAMPLE));
        double stiff = Fixtures.value(Houses.finding(
                "pressure.dropOut", survey -> Houses.supply(survey, "3.0 bar", "2.4 bar", "12 L/min"), THE_SAMPLE));
        assertTrue(stiff > weak);
        assertEquals(
                12,
                Houses.finding("pressure.dropOut", AS_IT_IS, THE_SAMPLE)
                        .printed()
                        .limit(),
                1e-9);
    }

    /**
     * The drop-out point found again by opening a tap to it: with that draw-off at the tee the held throttle passes just the flow
     * at which the switch opens. The two searches have nothing in common but the pipes.
     */
    @Test
    void theDropOutPointIsWhereTheSwitchOpens() {
        Finding dropOut = Houses.finding("pressure.dropOut", AS_IT_IS, THE_SAMPLE);
        double drawOff = Fixtures.value(dropOut);
        double held = step(dropOut, "R_h");
        double breakFlow = step(dropOut, "Q_b");
        // At the switch: p_in less the strainer's loss (0.15 bar at 8 L/min) is the break pressure of 0.2 bar.
        assertEquals(0.2, (held - 0.15 / 64) * breakFlow * breakFlow, 1e-9);
        assertEquals(drawOff, step(dropOut, "Q_d"), 1e-9);
        double total = drawOff + breakFlow;
        double atGauge = 3.0 + 0.3 * 0.0980665 - 1.2 * Math.pow(total / 12, total > 12 ? 2 : 1.85);
        // The first tap leaves at the gauge, so the rest of the way carries the unit's flow alone; 4 m of height lie on
        // it.
        assertTrue(atGauge - 4 * 0.098 > held * breakFlow * breakFlow);
    }

    private static double step(Finding finding, String symbol) {
        return Houses.step(finding, symbol).value();
    }

    /** 39.9 degC all the year and 40 degC wanted: over 1000 L/min could be heated. The pipe's open end decides how much runs. */
    @Test
    void aFlowBeyondThePipeIsNeverWorkedWith() {
        Survey survey = Samples.survey();
        survey.setWinterIntake(Temperature.valueOf("39.9 °C"));
        survey.setClimate("model");
        survey.setAnnualMeanAir(Temperature.valueOf("39.9 °C"));
        survey.setMonthlyAirSpread(TemperatureDifference.valueOf("0 K"));
        Heater unknown = Samples.heater();
        unknown.setMinimumRunningPressure(null);
        for (Finding finding : Houses.findings(survey, unknown, false)) {
            Finding.Figures figures = finding.printed();
            if (figures != null && finding.check().unit().symbol().equals("bar")) {
                assertTrue(figures.value() > -2, finding.check().key() + " " + figures.value());
            }
            Object flow = finding.arguments().get("flow");
            if (flow != null && finding.variant().isEmpty()) {
                assertTrue(((Number) flow).doubleValue() < 100, finding.check().key() + " " + flow);
            }
        }
    }

    @Test
    void anOpenedTapScaldsTheFrail() {
        Finding healthy = Houses.finding("pressure.tapOpens", AS_IT_IS, THE_SAMPLE);
        assertEquals("cutOut", healthy.variant());
        assertEquals(Outcome.NOT_APPLICABLE, healthy.outcome());
        Finding advice = Houses.finding("pressure.scald", AS_IT_IS, THE_SAMPLE);
        assertEquals(Outcome.FAILS, advice.outcome());
        assertEquals("cutOut", advice.variant());
        assertTrue(Fixtures.value(advice) > 55, "hotter than the cut-out's temperature before it acts");
        assertEquals(step(advice, "T_p"), Fixtures.value(advice), 1e-9);
        assertFalse(advice.rulesOut());
        Finding frail = Houses.finding(
                "pressure.tapOpens", survey -> survey.getCustomer().setVulnerable(true), THE_SAMPLE);
        assertEquals(Outcome.FAILS, frail.outcome());
        assertEquals("cutOut", frail.variant());
        assertTrue(frail.rulesOut());
        Finding bare = Houses.finding("pressure.tapOpens", AS_IT_IS, heater -> heater.setCutOutTemperature(null));
        assertTrue(Fixtures.value(bare) > 60);
        assertEquals(Outcome.FAILS, bare.outcome());
    }

    @Test
    void aUnitThatHoldsItsFlowStaysCool() {
        Finding held = Houses.finding(
                "pressure.tapOpens", survey -> Houses.supply(survey, "3.0 bar", "2.4 bar", "12 L/min"), heater -> {
                    heater.setStabilised(true);
                    heater.setStabilisedMinimum(Pressure.valueOf("0.1 bar"));
                });
        assertEquals(40, Fixtures.value(held), 0.3); // the stand-in circuit's flow is by a constant specific heat
    }

    @Test
    void whetherItHoldsItsFlowHasToBeKnown() {
        Consumer<Heater> unknown = heater -> {
            heater.setStabilised(null);
            heater.setCutOutTemperature(null);
        };
        Finding tap = Houses.finding("pressure.tapOpens", AS_IT_IS, unknown);
        assertEquals(List.of("heater.stabilised"), tap.missing());
        Finding stiff = Houses.finding(
                "pressure.tapOpens",
                survey -> {
                    Houses.supply(survey, "6.0 bar", "5.9 bar", "20 L/min");
                    Houses.gaugeAtHeater(survey);
                },
                unknown);
        assertEquals(Outcome.PASSES, stiff.outcome());
    }

    /** 3 L/min of 9.5 kW: 18.4 + 9.5 kW / (0.05 kg/s x 4.18 kJ/(kg K)) = 63.9 degC with full power at 240 V. */
    @Test
    void tooLittleWaterInSummerRunsHot() {
        Consumer<Heater> narrow = heater -> {
            heater.setMinimumRunningPressure(Pressure.valueOf("2.5 bar"));
            heater.setRunningPressureFlow(Flow.valueOf("3 L/min"));
            heater.getElements().add(element("5.0 kW"));
            heater.getElements().add(element("4.5 kW"));
        };
        Finding full = Houses.finding("pressure.summer", AS_IT_IS, narrow);
        double flow = ((Number) full.arguments().get("flow")).doubleValue();
        double power = ((Number) full.arguments().get("power")).doubleValue();
        assertEquals(18.4 + power / (flow / 60 * 0.9986 * 4.18), Fixtures.value(full), 0.3);
        assertEquals(Outcome.FAILS, full.outcome());
        assertEquals("cutOut", full.variant(), "hotter than the 55 degC at which the cut-out opens");
        assertFalse(full.rulesOut());
        Finding low = Houses.finding("pressure.summerLow", AS_IT_IS, narrow);
        assertTrue(Fixtures.value(low) < Fixtures.value(full));
        assertEquals(Outcome.PASSES, low.outcome());
        Finding single = Houses.finding("pressure.summerLow", AS_IT_IS, heater -> {
            narrow.accept(heater);
            heater.getElements().clear();
        });
        assertTrue(single.rulesOut(), "with one element no setting helps");
    }

    /** An element of which nobody says the power may be the larger one: the lowest setting is taken as full power. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {"-", "0 kW"})
    void withoutThePowerOfEachElementNoSettingIsLower(String power) {
        Consumer<Heater> unsaid = heater -> {
            heater.getElements().add(element("4.5 kW"));
            heater.getElements().add(CatalogueFactory.eINSTANCE.createElement());
            heater.getElements().get(1).setPower(power == null ? null : Power.valueOf(power));
        };
        assertEquals(
                Houses.finding("pressure.summer", AS_IT_IS, unsaid).arguments().get("power"),
                Houses.finding("pressure.summerLow", AS_IT_IS, unsaid)
                        .arguments()
                        .get("power"));
    }

    private static Element element(String power) {
        Element element = CatalogueFactory.eINSTANCE.createElement();
        element.setPower(Power.valueOf(power));
        return element;
    }

    /** A bucket at the present unit: 7.2 L/min in the sample. */
    @Test
    void aMeasuredFlowIsPreferred() {
        Finding available = Houses.findings(Samples.survey(), Samples.heater(), true).stream()
                .filter(finding -> finding.check().key().equals("pressure.available"))
                .findFirst()
                .orElseThrow();
        assertEquals(7.2, Fixtures.value(available), 1e-6);
        assertEquals("measured", available.variant());
    }

    /** The Drinking Water Inspectorate calls water hard above 200 mg/L of calcium carbonate. */
    @Test
    void scaleIsToBeExpectedFromHardWaterOn() {
        Finding scale = Houses.finding("pressure.scale", AS_IT_IS, THE_SAMPLE);
        assertEquals(200, Fixtures.limit(scale), 1e-9);
    }

    /** 10 L/min in 13.6 mm: 1.147 m/s; EN 806-3 allows 4 m/s in a pipe to one fitting and 2 m/s in a shared one. */
    @Test
    void velocityIsThatOfThePipe() {
        Finding velocity = Houses.finding("pressure.velocity", AS_IT_IS, THE_SAMPLE);
        double flow = ((Number) velocity.arguments().get("flow")).doubleValue();
        assertEquals(flow / 10 * 1.14731, Fixtures.value(velocity), 1e-4);
        assertEquals(4.0, velocity.printed().limit());
        Finding shared = Houses.finding(
                "pressure.velocity",
                survey -> survey.getWater().getDrawOffs().forEach(tap -> tap.setTeeAfter("rising main")),
                THE_SAMPLE);
        assertEquals(2.0, shared.printed().limit());
        assertEquals("rising main", shared.condition().subject());
        assertEquals(Outcome.FAILS, shared.outcome());
    }

    @ParameterizedTest
    @CsvSource({
        "3.0 bar, 1.0 bar, supply",
        "3.0 bar, 2.9 bar, height",
    })
    void theLargestLossIsNamed(String staticPressure, String running, String cause) {
        Finding loss = Houses.finding(
                "pressure.loss", survey -> Houses.supply(survey, staticPressure, running, "12 L/min"), THE_SAMPLE);
        assertEquals(cause, loss.variant());
        double sum = ((Number) loss.arguments().get("sum")).doubleValue();
        double parts = List.of("supply", "pipe", "fittings", "height").stream()
                .mapToDouble(each -> ((Number) loss.arguments().get(each)).doubleValue())
                .sum();
        assertEquals(sum, parts, 1e-9);
        assertEquals(100 * ((Number) loss.arguments().get(cause)).doubleValue() / sum, Fixtures.value(loss), 1e-9);
    }

    @Test
    void aFouledStrainerIsALossOfFittings() {
        Finding loss = Houses.finding(
                "pressure.loss",
                survey -> {
                    Houses.supply(survey, "3.0 bar", "2.7 bar", "12 L/min");
                    survey.getWater()
                            .getSegments()
                            .add(SampleHouse.pipe(
                                    "inlet",
                                    PipeMaterial.COPPER,
                                    "13.6 mm",
                                    "0.1 m",
                                    "0 m",
                                    "strainer-fouled",
                                    "strainer-fouled"));
                },
                THE_SAMPLE);
        assertEquals("fittings", loss.variant());
    }

    @ParameterizedTest
    @CsvSource({
        "none, false, FAILS, true",
        "check-valve, false, FAILS, true",
        "double-check-valve, false, PASSES, false",
        "retaining-ring, false, PASSES, false",
        "air-gap, false, PASSES, false",
        "double-check-valve, true, FAILS, true",
        "none, true, FAILS, true",
        "air-gap, true, PASSES, false",
    })
    void backflowNeedsTheRightProtection(String found, boolean reachesWc, Outcome outcome, boolean mended) {
        Survey survey = Samples.survey();
        survey.getWater().setBackflowProtection(found);
        survey.getWater().setHandsetReachesWc(reachesWc);
        Finding backflow = Houses.finding(survey, Samples.heater(), "pressure.backflow");
        assertEquals(outcome, backflow.outcome());
        assertEquals(mended, !backflow.remedies().isEmpty());
        if (mended) {
            double before = Fixtures.value(Houses.finding(survey, Samples.heater(), "pressure.running"));
            backflow.remedies().get(0).edit().accept(survey);
            assertEquals(
                    Outcome.PASSES,
                    Houses.finding(survey, Samples.heater(), "pressure.backflow")
                            .outcome());
            double after = Fixtures.value(Houses.finding(survey, Samples.heater(), "pressure.running"));
            assertEquals(!reachesWc, after < before, "a check valve costs pressure, a ring on the hose does not");
        }
    }

    @Test
    void hardWaterIsAMatterOfTheInstructions() {
        Finding tooHard = Houses.finding("pressure.hardness", AS_IT_IS, heater -> {
            heater.setMaximumHardness(twinfeed.units.Concentration.valueOf("200 mg/L"));
        });
        assertTrue(tooHard.rulesOut());
        Survey survey = Samples.survey();
        tooHard.remedies().get(0).edit().accept(survey);
        Heater soft = Samples.heater();
        soft.setMaximumHardness(twinfeed.units.Concentration.valueOf("200 mg/L"));
        Finding inhibited = Houses.finding(survey, soft, "pressure.hardness");
        assertEquals("inhibitor", inhibited.variant());
        assertFalse(inhibited.rulesOut());
        Finding present = Houses.findings(Samples.survey(), soft, true).stream()
                .filter(finding -> finding.check().key().equals("pressure.hardness"))
                .findFirst()
                .orElseThrow();
        assertEquals(Outcome.NOT_APPLICABLE, present.outcome(), "never a reason against the unit that is there");
        Finding unnamed = Houses.finding("pressure.hardness", AS_IT_IS, heater -> heater.setMaximumHardness(null));
        assertEquals(Outcome.NOT_APPLICABLE, unnamed.outcome());
        assertEquals(
                Outcome.FAILS,
                Houses.finding("pressure.scale", AS_IT_IS, THE_SAMPLE).outcome());
    }

    @Test
    void leadPipeIsNamed() {
        Finding lead = Houses.finding(
                "pressure.servicePipe",
                survey -> survey.getWater().getSegments().get(0).setMaterial(PipeMaterial.LEAD),
                THE_SAMPLE);
        assertEquals("lead", lead.variant());
        assertEquals(
                List.of("service-pipe"),
                lead.remedies().stream().map(remedy -> remedy.id()).toList());
        assertFalse(lead.rulesOut());
    }

    /** Ofwat guaranteed standards: 7 m of head, 0.7 bar. */
    @Test
    void aSupplyUnderTheStandardIsReported() {
        Consumer<Survey> weak = survey -> Houses.supply(survey, "0.65 bar", "0.4 bar", "8 L/min");
        assertEquals(
                Outcome.FAILS,
                Houses.finding("pressure.standard", weak, THE_SAMPLE).outcome());
    }

    /** A tap is an outlet that gives its stated flow when it is open alone. */
    @Test
    void aTapGivesItsStatedFlowAlone() {
        Survey survey = Samples.survey();
        Feed feed = Mapped.feed(survey);
        for (SurveyedTap tap : feed.taps()) {
            Feed alone = new Feed(feed.curve(), feed.run(), List.of(tap));
            double[] flows = new FeedHydraulics(alone, 12).tapFlows(0, alone.taps());
            assertEquals(tap.flowM3PerS(), flows[0], 1e-9);
        }
    }

    @Test
    void aTapWithoutAFlowHasTheDesignFlow() {
        Survey survey = Samples.survey();
        survey.getWater().getDrawOffs().get(0).setFlow(null);
        survey.getWater().getDrawOffs().get(1).setFlow(null);
        Feed feed = Mapped.feed(survey);
        // EN 806-3 Table 2: kitchen sink 0.2 L/s, basin 0.1 L/s
        assertEquals(0.2e-3, feed.taps().get(0).flowM3PerS(), 1e-12);
        assertEquals(0.1e-3, feed.taps().get(1).flowM3PerS(), 1e-12);
        assertTrue(Houses.assumptions(survey, Samples.heater())
                .contains("Flow of \"kitchen tap\" on its own taken as 12 L/min (EN 806-3 design flow): not measured"));
    }

    @Test
    void aTapThatTheSupplyCannotFeedIsWideOpen() {
        Survey survey = Samples.survey();
        survey.getWater().getDrawOffs().get(0).setFlow(Flow.valueOf("40 L/min"));
        assertTrue(Houses.assumptions(survey, Samples.heater()).stream()
                .anyMatch(text -> text.startsWith("This supply cannot give the 40 L/min stated for \"kitchen tap\"")));
    }

    /** EN 1057: 15 mm tube has a bore of 13.6 mm; drawn tube a roughness of 0.0015 mm (handbook tables of pipe friction). */
    @Test
    void whatTheTablesSayOfAPipeIsTold() {
        Survey survey = Samples.survey();
        PipeSegment pipe = survey.getWater().getSegments().get(1);
        pipe.setSize("15 mm");
        pipe.setBore(null);
        List<String> told = Houses.assumptions(survey, Samples.heater());
        assertTrue(told.contains("Bore of copper pipe 15 mm taken as 13.6 mm"), told.toString());
        assertTrue(told.contains("Wall roughness of copper pipe taken as 0.0015 mm"), told.toString());
    }

    /** EN 1057: 15 mm tube has a bore of 13.6 mm. */
    @Test
    void aNominalSizeHasItsUsualBore() {
        double given = Fixtures.value(Houses.finding("pressure.running", AS_IT_IS, THE_SAMPLE));
        double bySize = Fixtures.value(Houses.finding(
                "pressure.running",
                survey -> survey.getWater().getSegments().subList(1, 3).forEach(pipe -> {
                    pipe.setBore(null);
                    pipe.setSize("15 mm");
                }),
                THE_SAMPLE));
        assertEquals(given, bySize, 1e-12);
    }

    @Test
    void whatIsMissingOfAPipeIsNamed() {
        Finding running = Houses.finding(
                "pressure.running",
                survey -> {
                    survey.getWater().getSegments().get(0).setLength(null);
                    survey.getWater().getSegments().get(1).setBore(null);
                    survey.getWater().getSegments().get(2).setLength(null);
                    survey.getWater().getSegments().get(2).getFittings().get(0).setKind("gate");
                },
                THE_SAMPLE);
        assertEquals(
                List.of("survey.water.segments[rising main].bore", "survey.water.segments[shower branch].length"),
                running.missing());
    }

    @Test
    void anUnknownFittingOrTeeIsNamed() {
        Finding fitting = Houses.finding(
                "pressure.running",
                survey -> survey.getWater()
                        .getSegments()
                        .get(2)
                        .getFittings()
                        .get(0)
                        .setKind("widget"),
                THE_SAMPLE);
        assertEquals(List.of("survey.water.segments[shower branch].fittings"), fitting.missing());
        Finding tee = Houses.finding(
                "pressure.running",
                survey -> survey.getWater().getDrawOffs().get(1).setTeeAfter("nowhere"),
                THE_SAMPLE);
        assertEquals(List.of("survey.water.drawOffs[basin].teeAfter"), tee.missing());
    }

    @Test
    void aFlowAtPeakNeedsNoAllowance() {
        Finding peak = Houses.finding("pressure.peak", AS_IT_IS, THE_SAMPLE);
        double running = Fixtures.value(Houses.finding("pressure.running", AS_IT_IS, THE_SAMPLE));
        // Both pressures at the pipe less a fifth: 0.8 of the curve's 2.4626 bar at 8 L/min
        assertEquals(running - 0.2 * 2.4626, Fixtures.value(peak), 0.0005);
        assertFalse(peak.rulesOut());
        assertEquals(
                Outcome.NOT_APPLICABLE,
                Houses.finding(
                                "pressure.peak",
                                survey -> survey.getWater().getTest().setAtPeak(true),
                                THE_SAMPLE)
                        .outcome());
    }

    @Test
    void anEmptyFeedHasNoCurve() {
        Survey survey = Samples.survey();
        survey.setWater(null);
        Finding running = Houses.finding(survey, Samples.heater(), "pressure.running");
        assertEquals(Outcome.CANNOT_TELL, running.outcome());
        assertNull(running.printed());
    }

    /** Judgement, and nothing else says it: 5 kPa at 12 L/min. */
    @Test
    void cleanStrainerIsAssumedWhereTheInstructionsDoNotSayItsLoss() {
        Heater heater = Samples.heater();
        heater.setInletLoss(null);
        heater.setInletLossFlow(null);
        double assumed = Fixtures.value(Houses.finding(Samples.survey(), heater, "pressure.switch"));
        heater.setInletLoss(Pressure.valueOf("5 kPa"));
        heater.setInletLossFlow(Flow.valueOf("12 L/min"));
        assertEquals(Fixtures.value(Houses.finding(Samples.survey(), heater, "pressure.switch")), assumed, 1e-9);
    }

    /** Judgement: a reducing valve is set to four fifths of the highest pressure that the heater allows. */
    @Test
    void reducingValveIsSetWellUnderTheLimit() {
        Survey survey = Samples.survey();
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("4.5 bar"));
        Heater heater = Samples.heater();
        heater.setMaximumStaticPressure(Pressure.valueOf("3.5 bar"));
        Survey reduced = EcoreUtil.copy(survey);
        Houses.finding(survey, heater, "pressure.static").remedies().stream()
                .filter(work -> work.id().startsWith("reducing-valve"))
                .findFirst()
                .orElseThrow()
                .edit()
                .accept(reduced);
        assertEquals(2.8e5, reduced.getWater().getTest().getStaticPressure().si(), 1);
    }

    /** No handset hangs further from its heater than 10 m; more is a slip of the pen. */
    @ParameterizedTest
    @CsvSource({"10 m, true", "-10 m, true", "10.3 m, false", "-10.3 m, false"})
    void handsetFurtherAwayThanAnyHoseReachesIsNotBelieved(String height, boolean believed) {
        Survey survey = Samples.survey();
        survey.getWater().setLowestHandset(Length.valueOf(height));
        Heater heater = Samples.heater();
        heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER);
        Finding switched = Houses.finding(survey, heater, "pressure.switch");
        assertEquals(believed, switched.outcome() != Outcome.CANNOT_TELL);
    }
}
