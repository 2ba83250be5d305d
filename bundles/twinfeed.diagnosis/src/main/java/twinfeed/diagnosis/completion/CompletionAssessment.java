// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.completion;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.reading.AcceptanceValues;
import twinfeed.diagnosis.reading.ResistanceBand;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Heat;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.check.FailedSafety;
import twinfeed.model.check.LoopByResidual;
import twinfeed.model.job.Completion;
import twinfeed.model.survey.Survey;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;
import twinfeed.units.Quantity;
import twinfeed.units.text.NumberText;
import twinfeed.units.text.Texts;

/**
 * Judges the readings taken when the work is finished: by the checks of the house as it was finished where there is one, else by a band
 * of its own. In the order in which they are taken: dead tests, then live ones, then the water.
 */
public final class CompletionAssessment {
    /** Texts of readings and bands. */
    public static final Texts TEXTS = new Texts(CompletionAssessment.class, "Completion");

    /** Main bonding from end to end: guidance of the trade, from memory. */
    private static final double BONDING_OHM = 0.05;

    /** 230 V with +10/-6 % (Electricity Safety, Quality and Continuity Regulations 2002), 5 % of drop inside (BS 7671 Appendix 4, from memory). */
    private static final double LEAST_V = 230 * 0.94 - 230 * 0.05;

    private static final double MOST_V = 253;

    /** Hottest at the setting that is left: 44 degC is judgement; 41 degC the healthcare maximum at a shower (NHS guidance, read second hand). */
    private static final double HOTTEST_C = 44;

    private static final double HOTTEST_FRAIL_C = 41;

    /** By how much bucket and thermometer may err: judgement. */
    private static final double BUCKET = 0.1;

    private final Completion completion;
    private final Survey house;
    private final Heater heater;
    private final OptionAssessment judged;
    private final OptionAssessment limits;
    private final FaultData data;
    private final Locale locale;
    private final List<CompletionReading> readings = new ArrayList<>();
    private final Set<String> answered = new HashSet<>();

    private CompletionAssessment(
            Completion completion,
            Survey house,
            Heater heater,
            OptionAssessment judged,
            OptionAssessment limits,
            Locale locale) {
        this.completion = completion;
        this.house = house;
        this.heater = heater;
        this.judged = judged;
        this.limits = limits;
        this.data = FaultData.current();
        this.locale = locale;
    }

    /**
     * All readings, those that were not entered too, and behind them the checks of safety that the house as it was finished fails.
     *
     * @param completion what was entered
     * @param house the house with the work done and the readings in it, see {@link CompletionHouse}
     * @param heater the unit that is in it now
     * @param judged what the calculators found for that unit in that house
     * @param limits the same where harmless values stand for what was not measured, see {@link CompletionHouse#enterForLimits}
     * @param locale language of the texts
     */
    public static List<CompletionReading> of(
            Completion completion,
            Survey house,
            Heater heater,
            OptionAssessment judged,
            OptionAssessment limits,
            Locale locale) {
        CompletionAssessment all = new CompletionAssessment(completion, house, heater, judged, limits, locale);
        all.dead();
        all.live();
        all.water();
        all.failedChecks();
        return List.copyOf(all.readings);
    }

    private void dead() {
        proved("cpcContinuous", completion.getCpcContinuous(), true);
        byCheck("line", completion.getLine(), List.of(CheckTopic.EARTH_PATH), true, false);
        most("bonding", completion.getBonding(), BONDING_OHM, "Ω", 2, bondingNeeded());
        if (completion.getInsulation() != null) {
            judged.getFindings().stream()
                    .filter(each -> each.getTopic() == CheckTopic.INSULATION)
                    .forEach(each -> answered.add(each.getKey()));
        }
        least("insulation", completion.getInsulation(), data.limit("insulationLeast"), "MΩ", true);
        elements();
    }

    private void live() {
        boolean residual = CompletionHouse.residual(house);
        proved("polaritySupply", completion.getPolaritySupply(), true);
        proved("polarity", completion.getPolarity(), true);
        byCheck(
                "externalLoop",
                completion.getExternalLoop(),
                List.of(CheckTopic.ELECTRODE, CheckTopic.EXTERNAL_LOOP),
                false,
                true);
        loop();
        byCheck("prospectiveFault", completion.getProspectiveFault(), List.of(CheckTopic.FAULT_LEVEL), true, true);
        byCheck("residualTime", completion.getResidualTime(), List.of(CheckTopic.RESIDUAL_TRIP_TIME), true, residual);
        proved("residualButton", completion.getResidualButton(), residual);
        within("loadedVoltage", completion.getLoadedVoltage(), LEAST_V, MOST_V, "V");
    }

    private void water() {
        Quantity least = heater.getMinimumRunningPressure();
        if (least != null) {
            least("runningPressure", completion.getRunningPressure(), least.si(), "bar", false);
        } else {
            add("runningPressure", text(completion.getRunningPressure()), "", null, false, false);
        }
        heat();
        boolean frail = house.getCustomer() != null
                && Boolean.TRUE.equals(house.getCustomer().getVulnerable());
        most("outlet", completion.getOutlet(), frail ? HOTTEST_FRAIL_C : HOTTEST_C, "°C", 0, true);
        proved("tight", completion.getTight(), true);
        proved("shutsDown", completion.getShutsDown(), true);
    }

    private boolean bondingNeeded() {
        return house.getElectricity() == null
                || !Boolean.FALSE.equals(house.getElectricity().getMetalServices());
    }

    private void elements() {
        if (heater.getPower() == null || heater.getVoltage() == null) {
            add("elements", text(completion.getElements()), "", null, false, false);
            return;
        }
        ResistanceBand band = AcceptanceValues.of(house, heater, data).parallel();
        Double ohm = completion.getElements() == null
                ? null
                : Double.valueOf(completion.getElements().si());
        add(
                "elements",
                text(completion.getElements()),
                words("band", Map.of("least", ohms(band.leastOhm()), "most", ohms(band.mostOhm()))),
                ohm == null ? null : Boolean.valueOf(band.holds(ohm)),
                false,
                false);
    }

    /** Flow and rise of temperature against the power that the voltage at the unit gives. */
    private void heat() {
        String value = text(completion.getFlow());
        if (heater.getPower() == null || heater.getVoltage() == null) {
            add("flow", value, "", null, false, true);
            return;
        }
        AcceptanceValues values = AcceptanceValues.of(house, heater, data);
        double share = completion.getLoadedVoltage() == null
                ? 1
                : Math.pow(completion.getLoadedVoltage().si() / values.voltageV(), 2);
        double leastW = values.leastW() * share * (1 - BUCKET);
        double mostW = values.mostW() * share * (1 + BUCKET);
        Optional<Double> found = heatW();
        if (found.isPresent()) {
            value = words("heat", Map.of("flow", value, "power", Kind.POWER.amount(found.get())));
        }
        add(
                "flow",
                value,
                words("heatBand", Map.of("least", Kind.POWER.amount(leastW), "most", Kind.POWER.amount(mostW))),
                found.map(power -> power >= leastW && power <= mostW).orElse(null),
                false,
                true);
    }

    private Optional<Double> heatW() {
        if (completion.getFlow() == null || completion.getIntake() == null || completion.getOutlet() == null) {
            return Optional.empty();
        }
        double outletC = completion.getOutlet().si();
        Solution power = Heat.powerForFlow(
                Heat.massFlow(completion.getFlow().si(), outletC),
                completion.getIntake().si(),
                outletC);
        return power.isPresent() ? Optional.of(power.value()) : Optional.empty();
    }

    private void proved(String key, @Nullable Boolean value, boolean needed) {
        String text = value == null ? "" : words(value ? "yes" : "no", Map.of());
        add(key, text, words("yes", Map.of()), value, true, needed);
    }

    private void most(String key, @Nullable Quantity value, double limit, String unit, int decimals, boolean needed) {
        add(
                key,
                text(value),
                words("most", Map.of("limit", Quantities.format(limit, unit, decimals, locale))),
                value == null ? null : Boolean.valueOf(value.si() <= limit * (1 + 1e-9)),
                true,
                needed);
    }

    private void least(String key, @Nullable Quantity value, double limit, String unit, boolean safety) {
        add(
                key,
                text(value),
                words("least", Map.of("limit", Quantities.format(limit, unit, 1, locale))),
                value == null ? null : Boolean.valueOf(value.si() >= limit * (1 - 1e-9)),
                safety,
                true);
    }

    private void within(String key, @Nullable Quantity value, double least, double most, String unit) {
        add(
                key,
                text(value),
                words(
                        "band",
                        Map.of(
                                "least",
                                Quantities.format(least, unit, 0, locale),
                                "most",
                                Quantities.format(most, unit, 0, locale))),
                value == null ? null : Boolean.valueOf(value.si() >= least && value.si() <= most),
                false,
                true);
    }

    /** By the first of some checks that says anything of this house. */
    private void byCheck(
            String key, @Nullable Quantity value, List<CheckTopic> topics, boolean safety, boolean needed) {
        // Whether the earth path agrees rests on all its readings; without one of them it has no limit.
        OptionAssessment from = value == null && !key.equals("line") ? limits : judged;
        Optional<Finding> finding =
                topics.stream().flatMap(topic -> decided(from, topic)).findFirst();
        if (value != null) {
            finding.ifPresent(each -> answered.add(each.getKey()));
        }
        Boolean sound =
                value == null ? null : finding.map(CompletionAssessment::passes).orElse(null);
        // An earth rod is a matter of safety, the earth of the supply one of its operator: the check knows.
        boolean unsafe = safety
                || finding.filter(each -> each.getKind() == FindingClass.SAFETY).isPresent();
        add(key, text(value), finding.map(this::limit).orElse(""), sound, unsafe, needed);
    }

    private static Stream<Finding> decided(OptionAssessment from, CheckTopic topic) {
        return from.getFindings().stream()
                .filter(each -> each.getTopic() == topic)
                .filter(each -> each.getOutcome() == Outcome.PASSES || each.getOutcome() == Outcome.FAILS);
    }

    private static boolean passes(Finding finding) {
        return finding.getOutcome() == Outcome.PASSES;
    }

    private static boolean passesByResidual(Finding finding) {
        return passes(finding) && LoopByResidual.is(finding);
    }

    /**
     * A loop over the limit of the breaker passes the rules where an RCD disconnects, up to more than a thousand ohm: a supply whose earth is
     * lost would pass as well. So there the reading is sound only where Ze and the conductors account for it.
     */
    private void loop() {
        Quantity value = completion.getLoop();
        OptionAssessment from = value == null ? limits : judged;
        if (decided(from, CheckTopic.LOOP_IMPEDANCE).noneMatch(CompletionAssessment::passesByResidual)) {
            byCheck("loop", value, List.of(CheckTopic.LOOP_IMPEDANCE, CheckTopic.ELECTRODE), true, true);
            return;
        }
        String limit = decided(from, CheckTopic.LOOP_IMPEDANCE)
                .filter(each -> each.getKind() == FindingClass.ADVICE)
                .findFirst()
                .map(this::limit)
                .orElse("");
        Boolean sound = value == null
                ? null
                : decided(from, CheckTopic.EARTH_PATH)
                        .findFirst()
                        .map(CompletionAssessment::passes)
                        .orElse(null);
        String expected = limit.isEmpty() ? "explained" : "explainedAbove";
        add("loop", text(value), words(expected, Map.of("limit", limit)), sound, true, true);
    }

    /** What makes the finished house unsafe beside the readings, for instance a breaker that nobody changed: it is wrong like a reading. */
    private void failedChecks() {
        FailedSafety.of(judged).stream()
                .filter(each -> !answered.contains(each.getKey()))
                .forEach(each -> readings.add(
                        new CompletionReading(each.getKey(), each.getTitle(), each.getText(), "", false, true, false)));
    }

    private String limit(Finding finding) {
        Double limit = finding.getLimit();
        if (limit == null || finding.getValue() == null || finding.getMargin() == null) {
            return "";
        }
        boolean most = limit - finding.getValue() >= 0 == finding.getMargin() >= 0;
        // The finding's figures are in its own unit, not in SI.
        String figure = new NumberText(locale).pointed(printed(limit, most)) + " " + finding.getUnit();
        if (finding.getTopic() == CheckTopic.EARTH_PATH) {
            // Its limit is for what conductors leave unexplained of the loop, not for the conductors.
            return words("agrees", Map.of("limit", figure));
        }
        return words(most ? "most" : "least", Map.of("limit", figure));
    }

    /** To the safe side, so that a reading equal to the printed limit is never wrong; the rest of a computation does not count. */
    private static BigDecimal printed(double limit, boolean most) {
        double slack = (most ? 1e-9 : -1e-9) * Math.abs(limit);
        return BigDecimal.valueOf(limit + slack)
                .setScale(decimals(limit), most ? RoundingMode.FLOOR : RoundingMode.CEILING);
    }

    private static int decimals(double value) {
        return value < 10 ? 2 : value < 100 ? 1 : 0;
    }

    private void add(
            String key, String value, String expected, @Nullable Boolean sound, boolean safety, boolean needed) {
        readings.add(new CompletionReading(
                key,
                TEXTS.get(locale, "reading." + key),
                value,
                expected,
                value.isEmpty() ? null : sound,
                safety,
                needed));
    }

    private String words(String key, Map<String, ?> values) {
        return TEXTS.format(locale, "value." + key, values);
    }

    private String ohms(double ohm) {
        return Quantities.format(Kind.RESISTANCE, ohm, 4, locale);
    }

    private String text(@Nullable Quantity quantity) {
        return quantity == null ? "" : quantity.toString(locale);
    }
}
