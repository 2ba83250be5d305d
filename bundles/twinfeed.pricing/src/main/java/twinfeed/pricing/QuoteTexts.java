// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Assumption;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.check.Offers;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterFeed;
import twinfeed.pricing.texts.FigureText;
import twinfeed.pricing.texts.StandingTexts;
import twinfeed.pricing.texts.StandingTexts.Kind;

/** Assumptions, exclusions, terms and cautions of a quote. */
final class QuoteTexts {
    private final QuoteRequest request;
    private final Survey survey;
    private final StandingTexts texts;
    private final List<OptionAssessment> options;
    private final Set<String> codes;
    private final @Nullable Recommendation recommended;

    QuoteTexts(
            QuoteRequest request,
            Quote quote,
            List<OptionAssessment> options,
            Collection<BillOfQuantities> asks,
            @Nullable Recommendation recommended) {
        this.request = request;
        this.recommended = recommended;
        this.options = options;
        survey = request.survey();
        texts = texts(request, quote);
        codes = asks.stream()
                .flatMap(one -> one.all().stream())
                .map(ask -> ask.item().code())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The standing texts with what may be named in each of them. */
    private static StandingTexts texts(QuoteRequest request, Quote quote) {
        FigureText figures = new FigureText(request.locale());
        Customer customer = request.survey().getCustomer();
        Site site = request.survey().getSite();
        return request.texts()
                .with("date", figures.day(quote.getDate()))
                .with("validUntil", figures.day(quote.getValidUntil()))
                .with("validDays", String.valueOf(request.book().getValidDays()))
                .with("customer", customer == null ? "" : Objects.requireNonNullElse(customer.getName(), ""))
                .with("site", site == null ? "" : Objects.requireNonNullElse(site.getName(), ""));
    }

    void write(Quote quote, ContingencyReasons doubts) {
        quote.setSummary(summary(quote));
        Set<String> assumptions = new LinkedHashSet<>();
        List<Assumption> all = request.assessment().getAssumptions().stream()
                .filter(one -> !RemedyPrices.UNPRICED.equals(one.getKey()))
                .toList();
        all.stream().filter(one -> !tabulated(one)).map(Assumption::getText).forEach(assumptions::add);
        options.forEach(option -> assumptions.addAll(doubts.of(option)));
        assumptions.addAll(texts.own(Kind.ASSUMPTION));
        long figures = all.stream().filter(QuoteTexts::tabulated).count();
        if (figures > 0) {
            // Each of them stands on the sheet of sources.
            texts.get("assumption.tables", Map.of("count", String.valueOf(figures)))
                    .ifPresent(assumptions::add);
        }
        quote.getAssumptions().addAll(assumptions);
        quote.getExclusions().addAll(exclusions());
        quote.getTerms().addAll(terms(quote));
        quote.getCautions().addAll(cautions());
    }

    private static boolean tabulated(Assumption assumption) {
        return Boolean.TRUE.equals(assumption.getTabulated());
    }

    /** The answer first: what is recommended, and how many heaters suit; below it what was reported and found wrong with the unit that is there. */
    private String summary(Quote quote) {
        long suiting = count(Verdict.SUITS) + count(Verdict.SUITS_WITH_WORK);
        long assessed = request.assessment().getOptions().stream()
                .filter(option -> !OptionChoice.present(option))
                .count();
        List<String> answer = new ArrayList<>();
        recommendation(quote).ifPresent(answer::add);
        answer.add(text(count(suiting, assessed), suiting, assessed));
        answer.addAll(rest(suiting, assessed));
        List<String> found = new ArrayList<>();
        FaultReport faults = request.faults();
        if (!faults.reported().isEmpty()) {
            found.add(text("summary.reported", String.join("; ", faults.reported())));
        }
        if (faults.fault() != null) {
            found.add(faults.fault());
        }
        presentFault().ifPresent(found::add);
        String first = String.join(" ", answer);
        return found.isEmpty() ? first : first + "\n" + String.join(" ", found);
    }

    /** How many heaters suit: all, some, or none of them; and whether none does without work. */
    private String count(long suiting, long assessed) {
        if (assessed == 0) {
            return "summary.noHeater";
        }
        boolean alone = assessed == 1;
        if (suiting == 0) {
            boolean known = count(Verdict.DOES_NOT_SUIT) == assessed;
            return options.isEmpty() || known ? nothing(alone) : open(assessed, alone);
        }
        boolean work = count(Verdict.SUITS) == 0;
        if (alone) {
            return work ? "summary.one.work" : "summary.one";
        }
        if (suiting == assessed) {
            return work ? "summary.all.work" : "summary.all";
        }
        if (suiting == 1) {
            return work ? "summary.oneOf.work" : "summary.oneOf";
        }
        return work ? "summary.some.work" : "summary.some";
    }

    /** What is known of those among several that do not count as suiting: how many do not suit, and of how many nobody can tell yet. */
    private List<String> rest(long suiting, long assessed) {
        long unsuited = count(Verdict.DOES_NOT_SUIT);
        long open = assessed - suiting - unsuited;
        List<String> rest = new ArrayList<>();
        boolean nothing = suiting == 0 && (options.isEmpty() || open == 0);
        if (unsuited > 0 && !nothing) {
            rest.add(text(unsuited == 1 ? "summary.unsuited.one" : "summary.unsuited", unsuited));
        }
        if (open > 0 && suiting > 0) {
            rest.add(text(open == 1 ? "summary.untold.one" : "summary.untold", open));
        }
        return rest;
    }

    /** Where no heater suits yet: what fails as the house is, is known, though not whether work would fix it. */
    private String open(long assessed, boolean alone) {
        if (count(Verdict.NOT_AS_IT_IS) == assessed) {
            return alone ? "summary.asItIs.one" : "summary.asItIs";
        }
        return alone ? "summary.none.one" : "summary.none";
    }

    private static String nothing(boolean alone) {
        return alone ? "summary.nothing.one" : "summary.nothing";
    }

    /** Which of several options is recommended, and why. */
    private Optional<String> recommendation(Quote quote) {
        Recommendation one = recommended;
        if (quote.getOptions().size() < 2) {
            return Optional.empty();
        }
        if (one == null) {
            boolean waiting = quote.getOptions().stream()
                    .anyMatch(option -> Offers.suits(option.getVerdict())
                            && !option.getEnquiries().isEmpty());
            return waiting ? Optional.of(text("summary.recommended.none")) : Optional.empty();
        }
        String title = one.option().getTitle();
        FaultReport.Repair repair = request.faults().repair();
        int years = repair == null ? 0 : repair.years();
        String why =
                switch (one.reason()) {
                    case CHOSEN -> text("summary.recommended.chosen", title);
                    case REQUEST -> text("summary.recommended.request", title);
                    case REQUEST_OF_KNOWN -> text("summary.recommended.requestOfKnown", title);
                    case MORE_FOR_LESS -> text("summary.recommended.moreForLess", title);
                    case YEARS -> text("summary.recommended.years", title, RunningCost.YEARS);
                    case CHEAPEST -> text("summary.recommended.cheapest", title);
                    case REPAIR -> text("summary.recommended.repair", title, years);
                };
        return Optional.of(one.over() ? why + " " + text("summary.recommended.over", years) : why);
    }

    private long count(Verdict verdict) {
        return request.assessment().getOptions().stream()
                .filter(option -> !OptionChoice.present(option) && option.isSetVerdict())
                .filter(option -> option.getVerdict() == verdict)
                .count();
    }

    private Optional<String> presentFault() {
        return request.assessment().getOptions().stream()
                .filter(OptionChoice::present)
                .flatMap(option -> option.getFindings().stream()
                        .filter(finding -> Objects.equals(finding.getKey(), option.getBinding())))
                .filter(finding -> finding.getOutcome() == Outcome.FAILS && finding.getText() != null)
                // A danger stands above it already, at the head of the page.
                .filter(finding -> finding.getKind() != FindingClass.SAFETY)
                .map(finding -> Objects.requireNonNullElse(finding.getCustomerText(), finding.getText()))
                .findFirst();
    }

    private List<String> exclusions() {
        List<String> all = new ArrayList<>();
        say(all, "exclusion.notListed");
        say(all, "exclusion.concealed");
        say(all, "exclusion.decoration");
        say(all, "exclusion.asbestos");
        WorkRules.texts(codes, Kind.EXCLUSION).forEach(text -> say(all, text));
        all.addAll(texts.own(Kind.EXCLUSION));
        all.addAll(request.book().getExclusions());
        return all;
    }

    private List<String> terms(Quote quote) {
        List<String> all = new ArrayList<>();
        say(all, "term.valid");
        say(all, "term.rounding." + quote.getRounding());
        say(all, "term.taxDate");
        say(all, "term.notify");
        say(all, "term.certificate");
        say(all, "term.route");
        site(all);
        WorkRules.texts(codes, Kind.TERM).forEach(text -> say(all, text));
        if (quote.getOptions().stream()
                .flatMap(option -> option.getSections().stream())
                .anyMatch(section -> Section.CONTINGENCY.key().equals(section.getKey()))) {
            say(all, "term.contingency");
        }
        if (request.book().getPayments().isEmpty()) {
            say(all, "term.payment");
        }
        say(all, "term.cancel");
        all.addAll(texts.own(Kind.TERM));
        all.addAll(request.book().getTerms());
        return all;
    }

    /** How the place of work is to be found. */
    private void site(List<String> all) {
        Site site = survey.getSite();
        String access = site == null ? null : site.getLoftAccess();
        if (access == null) {
            say(all, "term.loft");
        } else {
            say(all, "term.loftBy", Map.of("loftAccess", access));
        }
        Boolean coating = site == null ? null : site.getTexturedCoating();
        if (!Boolean.FALSE.equals(coating)) {
            say(all, Boolean.TRUE.equals(coating) ? "term.coatingSeen" : "term.coating");
        }
    }

    private List<String> cautions() {
        List<String> all = new ArrayList<>();
        for (OptionAssessment option : options) {
            Verdict verdict = option.getVerdict();
            String title = Objects.requireNonNullElse(option.getTitle(), OptionChoice.name(option));
            switch (verdict) {
                case DOES_NOT_SUIT -> say(all, "caution.doesNotSuit", Map.of("heater", title));
                case NOT_AS_IT_IS -> say(all, "caution.notAsItIs", Map.of("heater", title));
                case CANNOT_TELL, NOT_CHECKED -> say(all, "caution.cannotTell", Map.of("heater", title));
                case SUITS, SUITS_WITH_WORK -> {}
            }
        }
        say(all, "caution.electricity");
        say(all, "caution.scalding");
        ScaldCaution.of(options, request.locale()).ifPresent(values -> say(all, "caution.tapOpens", values));
        boolean vulnerable = survey.getCustomer() != null
                && Boolean.TRUE.equals(survey.getCustomer().getVulnerable());
        say(all, vulnerable ? "caution.vulnerable" : "caution.children");
        if (leadPipe()) {
            say(all, "caution.lead");
        }
        say(all, "caution.codes");
        String rules = request.assessment().getRules();
        if (rules != null) {
            // What is unsure about its tables stands on the sheet of sources, for those who can check it.
            say(all, "caution.rules", Map.of("rules", rules));
        }
        all.addAll(texts.own(Kind.CAUTION));
        return all;
    }

    /** Lead in drinking water harms those who drink it, whatever becomes of the shower, so that they have to read of it. */
    private boolean leadPipe() {
        WaterFeed water = survey.getWater();
        return water != null
                && Stream.concat(
                                water.getSegments().stream(),
                                water.getDrawOffs().stream().flatMap(tap -> tap.getSegments().stream()))
                        .anyMatch(pipe -> pipe.getMaterial() == PipeMaterial.LEAD);
    }

    private void say(List<String> all, String key) {
        say(all, key, Map.of());
    }

    private void say(List<String> all, String key, Map<String, String> values) {
        texts.get(key, values).ifPresent(all::add);
    }

    private String text(String key, Object... arguments) {
        return QuoteException.MESSAGES.inOrder(request.locale(), key, arguments);
    }
}
