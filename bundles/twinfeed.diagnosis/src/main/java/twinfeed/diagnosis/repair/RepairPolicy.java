// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.repair;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.FaultPart;
import twinfeed.diagnosis.inference.Diagnosis;
import twinfeed.diagnosis.inference.NextStep;
import twinfeed.diagnosis.inference.RankedPart;
import twinfeed.diagnosis.text.FaultTexts;
import twinfeed.model.survey.Survey;
import twinfeed.units.text.NumberText;

/**
 * Repair or replace as a policy: the next test, then the first part, and, as far as that does not cure, a next visit with the
 * next part. Later failures of the unit that stays and of a new one are counted over the same years.
 */
public final class RepairPolicy {
    private static final int OLDEST = 40;

    private final Diagnosis diagnosis;
    private final Survey survey;
    private final VisitPrices prices;
    private final LifeModel life;
    private final FaultTexts words;

    /**
     * For one diagnosis.
     *
     * @param diagnosis the diagnosis
     * @param survey the survey, for age and hardness
     * @param prices what visits cost
     * @param life how often units fail
     * @param words texts in the language of the advice
     */
    public RepairPolicy(Diagnosis diagnosis, Survey survey, VisitPrices prices, LifeModel life, FaultTexts words) {
        this.diagnosis = diagnosis;
        this.survey = survey;
        this.prices = prices;
        this.life = life;
        this.words = words;
    }

    /** The advice; empty where there is no part to renew. */
    public Optional<RepairAdvice> advise(List<ReplacementOffer> offers) {
        List<RankedPart> renewable = renewable();
        boolean blamed = diagnosis.conclusion() == Diagnosis.Conclusion.PART
                || diagnosis.conclusion() == Diagnosis.Conclusion.SEVERAL;
        return blamed && renewable.size() >= 2
                ? Optional.of(advice(renewable.get(0), renewable.get(1), offers))
                : Optional.empty();
    }

    /** Whether the price list has all that the renewal of a part needs. */
    public boolean priced(String part) {
        return prices.known(diagnosis.data().part(part));
    }

    /** Expected price without tax of later failures over the horizon: of the unit that stays, or of a new one. */
    public BigDecimal laterFailures(boolean fresh) {
        return later(fresh ? 0 : age(), prices.meanRenewal(diagnosis.data())).getAmount();
    }

    /** Expected price without tax of what follows where renewing the likeliest part does not cure: the next visit with the next part. */
    public BigDecimal followUp() {
        List<RankedPart> renewable = renewable();
        if (renewable.size() < 2) {
            return prices.none().getAmount();
        }
        double cured = renewable.get(0).chance() * diagnosis.data().limit("cure");
        return VisitPrices.times(
                        prices.renewal(diagnosis.data().part(renewable.get(1).part())), 1 - cured)
                .getAmount();
    }

    /** Years over which repair and replacement are compared. */
    public int years() {
        return life.years();
    }

    private List<RankedPart> renewable() {
        return diagnosis.posterior().ranked().stream()
                .filter(each -> !diagnosis.data().part(each.part()).codes().isEmpty())
                .toList();
    }

    private RepairAdvice advice(RankedPart first, RankedPart second, List<ReplacementOffer> offers) {
        List<RepairAdvice.Line> lines = new ArrayList<>();
        Money repair = lines(first, second, lines);
        Money mean = prices.meanRenewal(diagnosis.data());
        Money later = later(age(), mean);
        Money total = repair.plus(later);
        Money laterNew = later(0, mean);
        List<RepairAdvice.Replacement> replacements = offers.stream()
                .map(offer -> replacement(offer, laterNew))
                .sorted(Comparator.comparing(RepairAdvice.Replacement::total))
                .toList();
        @Nullable
        BigDecimal cheapest =
                replacements.isEmpty() ? null : replacements.get(0).total();
        return new RepairAdvice(
                prices.currency().getCode(),
                lines,
                repair.getAmount(),
                later.getAmount(),
                total.getAmount(),
                life.years(),
                replacements,
                cheapest == null ? null : breakEvenAge(repair, mean, cheapest),
                cheapest == null ? null : cheapest.subtract(later.getAmount()).max(BigDecimal.ZERO),
                sentence(first, repair, total, replacements),
                assumptions(),
                prices.missing());
    }

    private Money lines(RankedPart first, RankedPart second, List<RepairAdvice.Line> lines) {
        FaultData data = diagnosis.data();
        Money test = prices.labour(diagnosis.next().map(NextStep::minutes).orElse(0.0));
        double cured = first.chance() * data.limit("cure");
        Money now = prices.renewal(data.part(first.part()));
        Money then = VisitPrices.times(prices.renewal(data.part(second.part())), 1 - cured);
        diagnosis
                .next()
                .ifPresent(step -> lines.add(new RepairAdvice.Line(
                        words.format(
                                "policy.test",
                                Map.of(
                                        "question",
                                        words.question(step.observation().key()))),
                        test.getAmount())));
        lines.add(new RepairAdvice.Line(
                words.format("policy.first", Map.of("part", words.part(first.part()))), now.getAmount()));
        lines.add(new RepairAdvice.Line(
                words.format("policy.next", Map.of("part", words.part(second.part()), "chance", 100 * (1 - cured))),
                then.getAmount()));
        return test.plus(now).plus(then);
    }

    private int age() {
        return life.age(survey.getUnit() == null ? null : survey.getUnit().getAge());
    }

    private String hardness() {
        return life.hardnessClass(
                survey.getWater() == null ? null : survey.getWater().getHardness());
    }

    private Money later(int ageYears, Money mean) {
        return VisitPrices.times(mean, life.failures(ageYears, hardness()));
    }

    private static RepairAdvice.Replacement replacement(ReplacementOffer offer, Money later) {
        return new RepairAdvice.Replacement(
                offer.heater(),
                offer.title(),
                offer.price().getAmount(),
                later.getAmount(),
                offer.price().plus(later).getAmount(),
                offer.enquiry());
    }

    /** The rate of failures only grows with age, so the first age that is dear enough is the break-even. */
    private @Nullable Integer breakEvenAge(Money repair, Money mean, BigDecimal cheapest) {
        for (int age = 0; age <= OLDEST; age++) {
            if (repair.plus(later(age, mean)).getAmount().compareTo(cheapest) >= 0) {
                return age;
            }
        }
        return null;
    }

    private String sentence(RankedPart first, Money repair, Money total, List<RepairAdvice.Replacement> replacements) {
        Map<String, Object> values = new java.util.LinkedHashMap<>();
        FaultPart part = diagnosis.data().part(first.part());
        values.put("part", words.part(part.key()));
        values.put("chance", first.percent());
        values.put("years", life.years());
        values.put("repair", money(repair.getAmount()));
        values.put("total", money(total.getAmount()));
        if (replacements.isEmpty()) {
            return words.format("advice.repairOnly", values);
        }
        RepairAdvice.Replacement cheapest = replacements.get(0);
        values.put("heater", cheapest.title());
        values.put("price", money(cheapest.price()));
        values.put("replacementTotal", money(cheapest.total()));
        boolean keep = total.getAmount().compareTo(cheapest.total()) < 0;
        return words.format(keep ? "advice.repair" : "advice.replace", values);
    }

    private String money(BigDecimal amount) {
        return new NumberText(words.locale()).pointed(amount) + "\u00a0"
                + prices.currency().getCode();
    }

    private List<String> assumptions() {
        List<String> all = new ArrayList<>();
        all.add(words.format(
                survey.getUnit() == null || survey.getUnit().getAge() == null ? "age.assumed" : "age.known",
                Map.of("age", age())));
        all.add(words.format(
                "assumption.life",
                Map.of(
                        "failures",
                        life.failures(age(), hardness()),
                        "fresh",
                        life.failures(0, hardness()),
                        "years",
                        life.years(),
                        "hardness",
                        words.get(hardness()))));
        all.add(words.format(
                "assumption.rates",
                Map.of(
                        "rate",
                        life.value("newRate"),
                        "doubling",
                        life.value("doubling"),
                        "factor",
                        life.value(hardness()),
                        "most",
                        life.value("mostRate"))));
        return all;
    }
}
