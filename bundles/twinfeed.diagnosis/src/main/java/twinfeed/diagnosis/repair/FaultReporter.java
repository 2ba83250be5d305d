// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.repair;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.data.FaultPart;
import twinfeed.diagnosis.data.ObservationStage;
import twinfeed.diagnosis.inference.Diagnosis;
import twinfeed.diagnosis.inference.Diagnosis.Conclusion;
import twinfeed.diagnosis.inference.ObservationAnswer;
import twinfeed.diagnosis.text.FaultTexts;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.check.Offers;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.FaultReport;
import twinfeed.pricing.FaultReport.Repair;

/**
 * What a quote says of a fault-finding: what was reported, what most likely has failed, and the repair where it is sound. A repair is
 * sound where one part stands out, is in the price list, and the unit is worth it: neither recalled nor under guarantee, of known age,
 * and known to suit the house. Where the supplies are to blame, the work on them takes the place of the repair.
 */
public final class FaultReporter {
    /** Chance from which a part is named, and a fixed price given for its renewal: judgement. */
    private static final double STANDS_OUT = 0.5;

    private final Diagnosis diagnosis;
    private final Survey survey;
    private final Heater heater;
    private final OptionAssessment present;
    private final RepairPolicy policy;
    private final FaultTexts words;

    /**
     * Of a diagnosis.
     *
     * @param heater data of the unit that is there
     * @param present what was found for it
     * @param policy prices of repair and later failures
     * @param words texts in the language of the quote
     */
    public FaultReporter(
            Diagnosis diagnosis,
            Survey survey,
            Heater heater,
            OptionAssessment present,
            RepairPolicy policy,
            FaultTexts words) {
        this.diagnosis = diagnosis;
        this.survey = survey;
        this.heater = heater;
        this.present = present;
        this.policy = policy;
        this.words = words;
    }

    /** What the quote says. */
    public FaultReport report() {
        List<String> reported = reported();
        boolean fault = diagnosis.evidence().answers().stream()
                .anyMatch(answer -> answer.yes() && answer.origin() != ObservationAnswer.Origin.FEED);
        if (!fault) {
            return FaultReport.NONE;
        }
        Optional<String> refusal = refusal();
        return new FaultReport(reported, fault(), refusal.isPresent() ? null : repair(), refusal.orElse(null));
    }

    /** What was told, of each observation its sentence; what is only seen by an engineer is not the customer's. */
    private List<String> reported() {
        return diagnosis.evidence().answers().stream()
                .filter(answer -> answer.yes() && answer.origin() == ObservationAnswer.Origin.SAID)
                .filter(answer -> diagnosis
                        .data()
                        .observation(answer.key())
                        .map(each -> each.place() == ObservationStage.TOLD)
                        .orElse(false))
                .flatMap(answer -> words.reported(answer.key()).stream())
                .toList();
    }

    private String part() {
        return diagnosis.posterior().first().part();
    }

    private boolean standsOut() {
        return diagnosis.posterior().first().chance() >= STANDS_OUT;
    }

    private String fault() {
        String part = words.customerPart(part());
        return switch (diagnosis.conclusion()) {
            case PART ->
                standsOut()
                        ? words.customer("fault.part", Map.of("part", part))
                        : words.customer("fault.open", Map.of());
            case SEVERAL -> words.customer("fault.several", Map.of("part", part));
            case SUPPLY -> words.customer("fault.supply", Map.of());
            case NOTHING_REPORTED, NONE_OF_THESE -> words.customer("fault.open", Map.of());
        };
    }

    /** Why no repair is offered; empty if one is. */
    private Optional<String> refusal() {
        if (heater.getRecalledOn() != null) {
            return refusal("recalled");
        }
        Conclusion conclusion = diagnosis.conclusion();
        if (conclusion == Conclusion.SEVERAL) {
            return refusal("several");
        }
        boolean part = conclusion == Conclusion.PART && standsOut();
        if (!part && conclusion != Conclusion.SUPPLY) {
            return refusal("open");
        }
        if (part && diagnosis.evidence().unsafeReading(diagnosis.data())) {
            return refusal("unmeasured");
        }
        if (part && underGuarantee()) {
            return refusal("guarantee");
        }
        PresentUnit unit = survey.getUnit();
        if (unit == null || unit.getAge() == null) {
            return refusal("age");
        }
        if (part && !policy.priced(part())) {
            return refusal("price");
        }
        return unsuitable(conclusion);
    }

    private Optional<String> unsuitable(Conclusion conclusion) {
        if (!present.isSetVerdict()
                || Offers.open(present.getVerdict()) && failing().isEmpty()) {
            return refusal("unknown");
        }
        if (!Offers.suits(present.getVerdict())) {
            String key = Offers.open(present.getVerdict()) ? "noRepair.asItIs" : "noRepair.unfit";
            return Optional.of(words.customer(key, Map.of("reason", failing())));
        }
        // Where the supplies are to blame and no work puts them right, there is nothing to be offered but a new heater.
        return conclusion == Conclusion.SUPPLY && present.getVerdict() == Verdict.SUITS
                ? refusal("open")
                : Optional.empty();
    }

    private String failing() {
        return present.getFindings().stream()
                .filter(finding -> finding.getOutcome() == Outcome.FAILS)
                .filter(finding -> Objects.equals(finding.getKey(), present.getBinding())
                        || present.getUnmended().contains(finding.getKey()))
                .flatMap(finding -> Stream.of(finding.getCustomerText(), finding.getText())
                        .filter(Objects::nonNull)
                        .limit(1))
                .findFirst()
                .orElse("");
    }

    /** By the last day that its papers name, else by its age; where neither tells it is not. */
    private boolean underGuarantee() {
        PresentUnit unit = survey.getUnit();
        if (unit == null) {
            return false;
        }
        LocalDate until = unit.getGuaranteeUntil();
        LocalDate today = survey.getTakenOn();
        if (until != null && today != null) {
            return !today.isAfter(until);
        }
        Integer years = heater.getGuaranteeYears();
        return years != null && unit.getAge() != null && unit.getAge() < years;
    }

    private Optional<String> refusal(String key) {
        return Optional.of(words.customer("noRepair." + key, Map.of()));
    }

    private Repair repair() {
        boolean supply = diagnosis.conclusion() == Conclusion.SUPPLY;
        FaultPart part = diagnosis.data().part(part());
        BigDecimal follow = supply ? BigDecimal.ZERO : policy.followUp();
        @Nullable String renewed = supply ? null : part.key();
        return new Repair(
                renewed,
                supply ? "" : words.renewal(part.key()),
                supply ? List.of() : part.codes(),
                follow.add(policy.laterFailures(false)),
                policy.laterFailures(true),
                policy.years());
    }
}
