// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.engine.SourceText;
import twinfeed.calculator.safety.SafeIsolation;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.FaultPart;
import twinfeed.diagnosis.inference.Diagnosis;
import twinfeed.diagnosis.inference.Evidence;
import twinfeed.diagnosis.inference.NextStep;
import twinfeed.diagnosis.inference.ObservationAnswer;
import twinfeed.diagnosis.inference.Posterior;
import twinfeed.diagnosis.inference.RankedPart;
import twinfeed.diagnosis.isolation.IsolationRecord;
import twinfeed.diagnosis.repair.FaultReporter;
import twinfeed.diagnosis.repair.LifeModel;
import twinfeed.diagnosis.repair.RepairAdvice;
import twinfeed.diagnosis.repair.RepairPolicy;
import twinfeed.diagnosis.repair.ReplacementOffer;
import twinfeed.diagnosis.repair.VisitPrices;
import twinfeed.diagnosis.text.FaultTexts;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.FaultStep;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.Symptom;
import twinfeed.pricing.FaultReport;

/** Writes the job sheet of a fault-finding. */
public final class FaultSheetBuilder {
    /** Chance from which a part is called the likeliest rather than one of several: judgement. */
    private static final double STANDS_OUT = 0.5;

    private final Survey survey;
    private final Heater heater;
    private final FaultData data;
    private final SupplyFindings feeds;
    private final Diagnosis diagnosis;
    private final FaultTexts words;
    private final int unanswered;
    private final OptionAssessment present;

    /**
     * For the unit that is there.
     *
     * @param survey the survey; not changed
     * @param heater the unit's data
     * @param present what the calculators found for that unit
     * @param unanswered number of checks that a calculator left unanswered
     * @param locale language of the sheet
     */
    public FaultSheetBuilder(Survey survey, Heater heater, OptionAssessment present, int unanswered, Locale locale) {
        this.unanswered = unanswered;
        this.present = present;
        this.survey = survey;
        this.heater = heater;
        this.data = FaultData.current();
        this.feeds = new SupplyFindings(present);
        this.diagnosis = Diagnosis.of(Evidence.of(survey, heater, feeds.feeds(), data), data);
        this.words = new FaultTexts(locale);
    }

    /**
     * Reads the data of judgement, a firm's own where it names some.
     *
     * @throws IllegalArgumentException if they cannot be used; the message says file, row and what would be right
     */
    public static void readData() {
        FaultData.current();
        LifeModel.current();
    }

    /** What follows from the survey. */
    public Diagnosis diagnosis() {
        return diagnosis;
    }

    /** The sheet without prices. */
    public FaultSheet sheet() {
        return sheet((@Nullable RepairAdvice) null);
    }

    /**
     * The sheet with repair and replacement priced.
     *
     * @param book the price book
     * @param date day of the prices
     * @param offers new units as they would be quoted; may be empty
     */
    public FaultSheet sheet(PriceBook book, LocalDate date, List<ReplacementOffer> offers) {
        VisitPrices prices = new VisitPrices(book, date);
        return sheet(new RepairPolicy(diagnosis, survey, prices, LifeModel.current(), words)
                .advise(offers)
                .orElse(null));
    }

    /**
     * What a quote says of the fault.
     *
     * @param book the price book
     * @param date day of the prices
     */
    public FaultReport report(PriceBook book, LocalDate date) {
        RepairPolicy policy =
                new RepairPolicy(diagnosis, survey, new VisitPrices(book, date), LifeModel.current(), words);
        return new FaultReporter(diagnosis, survey, heater, present, policy, words).report();
    }

    private FaultSheet sheet(@Nullable RepairAdvice repair) {
        return new FaultSheet(
                title(),
                diagnosis.conclusion().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                summary(),
                causes(),
                diagnosis.posterior().several(),
                next(),
                answers(),
                FaultReadings.of(diagnosis, survey, heater, words),
                isolation(),
                isolationNotice(),
                RelatedFindings.of(diagnosis, feeds, words),
                steps(),
                FaultReadings.after(diagnosis, survey, heater, words),
                repair,
                notices(),
                unanswered,
                SourceText.in(words.locale()).of(data.source() + "; " + data.status()),
                List.of(
                        words.get("caution.electricity"),
                        words.format(
                                "caution.cover",
                                Map.of(
                                        "stages",
                                        SafeIsolation.stages(words.locale()),
                                        "suspected",
                                        SafeIsolation.suspected(words.locale()))),
                        words.get("caution.switchingOn"),
                        words.get("caution.water"),
                        words.get("caution.ranking")));
    }

    /** The finding's own title comes first: it is in the language of the sheet where the price book has it. */
    private String title() {
        if (present.getTitle() != null) {
            return present.getTitle();
        }
        if (heater.getTitle() != null) {
            return heater.getTitle();
        }
        return heater.getId() == null ? words.get("unit.unknown") : heater.getId();
    }

    private String summary() {
        Posterior posterior = diagnosis.posterior();
        RankedPart first = posterior.first();
        Posterior.Pair pair = posterior.pair();
        boolean open = diagnosis.conclusion() == Diagnosis.Conclusion.PART && first.chance() < STANDS_OUT;
        return words.format(
                "summary." + diagnosis.conclusion().name() + (open ? ".open" : ""),
                Map.of(
                        "part", words.part(first.part()),
                        "chance", first.percent(),
                        "one", words.part(pair.first()),
                        "other", words.part(pair.second()),
                        "several", 100 * Math.min(posterior.several(), RankedPart.MOST_PRINTED)));
    }

    private List<FaultSheet.Cause> causes() {
        return diagnosis.posterior().ranked().stream()
                .map(each -> {
                    FaultPart part = data.part(each.part());
                    return new FaultSheet.Cause(
                            each.part(),
                            words.part(each.part()),
                            each.prior(),
                            each.chance(),
                            words.reason(part),
                            part.codes());
                })
                .toList();
    }

    private FaultSheet.@Nullable Next next() {
        return diagnosis.next().map(this::next).orElse(null);
    }

    private FaultSheet.Next next(NextStep step) {
        String place = step.observation().place().name().toLowerCase(Locale.ROOT);
        boolean tick = step.opensCover() && !diagnosis.evidence().isolation().complete();
        return new FaultSheet.Next(
                step.observation().key(),
                words.question(step.observation().key()),
                place,
                words.stage(place),
                step.minutes(),
                step.informationBits(),
                tick ? procedure() : List.of());
    }

    private List<String> procedure() {
        return diagnosis.evidence().isolation().procedure().stream()
                .map(words::isolation)
                .toList();
    }

    private List<FaultSheet.Answer> answers() {
        List<FaultSheet.Answer> all = new ArrayList<>();
        for (Symptom symptom : survey.getSymptoms()) {
            if (symptom.getKey() != null && symptom.isSetAnswer() && symptom.getAnswer() == FaultAnswer.UNKNOWN) {
                all.add(answer(symptom.getKey(), "unknown", "said"));
            }
        }
        for (ObservationAnswer each : diagnosis.evidence().answers()) {
            all.add(answer(
                    each.key(), each.yes() ? "yes" : "no", each.origin().name().toLowerCase(Locale.ROOT)));
        }
        return all;
    }

    private FaultSheet.Answer answer(String key, String answer, String origin) {
        String note = survey.getSymptoms().stream()
                .filter(symptom -> key.equals(symptom.getKey()))
                .map(symptom -> signed(symptom.getNote(), symptom.getBy(), symptom.getAt()))
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
        return new FaultSheet.Answer(key, words.question(key), answer, origin, note);
    }

    private static String signed(@Nullable String text, @Nullable String by, @Nullable String at) {
        List<String> parts = new ArrayList<>();
        for (String each : new @Nullable String[] {text, by, at}) {
            if (each != null && !each.isBlank()) {
                parts.add(each.strip());
            }
        }
        // A sentence that goes on with who said it and when loses its full stop.
        return String.join("; ", parts).replace(".; ", "; ");
    }

    private List<FaultSheet.Tick> isolation() {
        return diagnosis.evidence().isolation().ticks().stream()
                .map(tick -> new FaultSheet.Tick(
                        tick.step(), words.isolation(tick.step()), tick.by(), tick.at(), tick.done()))
                .toList();
    }

    private String isolationNotice() {
        IsolationRecord isolation = diagnosis.evidence().isolation();
        if (isolation.superseded() && diagnosis.evidence().unsafeReading(data)) {
            return words.get("isolation.superseded");
        }
        if (diagnosis.evidence().unsafeReading(data)) {
            return words.get("isolation.unsafe");
        }
        if (isolation.begun() && !isolation.inOrder()) {
            return words.get("isolation.order");
        }
        if (isolation.superseded() && !isolation.complete()) {
            return words.get("isolation.superseded");
        }
        return "";
    }

    private List<String> steps() {
        if (survey.getFaultFinding() == null) {
            return List.of();
        }
        List<String> all = new ArrayList<>();
        for (FaultStep step : survey.getFaultFinding().getSteps()) {
            all.add(signed(step.getWhat(), step.getBy(), step.getAt()));
        }
        return all;
    }

    private List<String> notices() {
        List<String> notices = new ArrayList<>();
        if (unanswered > 0) {
            notices.add(words.format("notice.unanswered", Map.of("count", unanswered)));
        }
        diagnosis.evidence().unknown().forEach(key -> notices.add(words.format("notice.unknown", Map.of("key", key))));
        return notices;
    }
}
