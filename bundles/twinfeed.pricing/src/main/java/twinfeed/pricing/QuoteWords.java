// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;

/** Assumptions, exclusions, terms and cautions of a quote. */
final class QuoteWords {
    private final QuoteRequest request;
    private final Survey survey;
    private final Locale locale;
    private final List<OptionAssessment> options;
    private final Set<String> codes;

    QuoteWords(QuoteRequest request, List<OptionAssessment> options, Collection<Asks> asks) {
        this.request = request;
        this.options = options;
        survey = request.survey();
        locale = request.locale();
        codes = asks.stream()
                .flatMap(one -> one.all().stream())
                .map(ask -> ask.item().code())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    void write(Quote quote, Doubts doubts) {
        quote.setSummary(summary());
        Set<String> assumptions = new LinkedHashSet<>();
        request.assessment().getAssumptions().forEach(one -> assumptions.add(one.getText()));
        options.forEach(option -> assumptions.addAll(doubts.of(option)));
        quote.getAssumptions().addAll(assumptions);
        quote.getExclusions().addAll(exclusions());
        quote.getTerms().addAll(terms(quote));
        quote.getCautions().addAll(cautions());
    }

    /** What is wrong with the unit that is there, and how many heaters suit. */
    private String summary() {
        long suiting = count(Verdict.SUITS) + count(Verdict.SUITS_WITH_WORK);
        long assessed = request.assessment().getOptions().stream()
                .filter(option -> !OptionChoice.present(option))
                .count();
        String heaters = text(suiting == 0 ? "summary.none" : "summary.some", suiting, assessed);
        return presentFault().map(fault -> fault + " " + heaters).orElse(heaters);
    }

    private long count(Verdict verdict) {
        return request.assessment().getOptions().stream()
                .filter(option -> !OptionChoice.present(option) && option.isSetVerdict())
                .filter(option -> option.getVerdict() == verdict)
                .count();
    }

    private java.util.Optional<String> presentFault() {
        return request.assessment().getOptions().stream()
                .filter(OptionChoice::present)
                .flatMap(option -> option.getFindings().stream()
                        .filter(finding -> Objects.equals(finding.getKey(), option.getBinding())))
                .filter(finding -> finding.getOutcome() == Outcome.FAILS && finding.getText() != null)
                .map(Finding::getText)
                .findFirst();
    }

    private List<String> exclusions() {
        List<String> all = new ArrayList<>();
        all.add(text("exclusion.notListed"));
        all.add(text("exclusion.concealed"));
        all.add(text("exclusion.decoration"));
        all.add(text("exclusion.asbestos"));
        if (codes.contains("operator-fuse")) {
            all.add(text("exclusion.operator"));
        }
        all.addAll(request.book().getExclusions());
        return all;
    }

    private List<String> terms(Quote quote) {
        List<String> all = new ArrayList<>();
        all.add(text("term.valid", quote.getValidUntil()));
        all.add(text("term.rounding." + quote.getRounding()));
        all.add(text("term.taxDate", quote.getDate()));
        all.add(text("term.notify"));
        all.add(text("term.certificate"));
        all.add(text("term.route"));
        all.add(loft());
        if (!Boolean.FALSE.equals(site().getTexturedCoating())) {
            all.add(text(Boolean.TRUE.equals(site().getTexturedCoating()) ? "term.coatingSeen" : "term.coating"));
        }
        if (codes.contains("break-tank-pump")) {
            all.add(text("term.pump"));
        }
        if (request.book().getContingency() != null) {
            all.add(text("term.contingency"));
        }
        if (request.book().getPayments().isEmpty()) {
            all.add(text("term.payment"));
        }
        all.add(text("term.cancel"));
        all.addAll(request.book().getTerms());
        return all;
    }

    private Site site() {
        return survey.getSite() == null ? twinfeed.model.survey.SurveyFactory.eINSTANCE.createSite() : survey.getSite();
    }

    private String loft() {
        String access = site().getLoftAccess();
        return access == null ? text("term.loft") : text("term.loftBy", access);
    }

    private List<String> cautions() {
        List<String> all = new ArrayList<>();
        for (OptionAssessment option : options) {
            Verdict verdict = option.isSetVerdict() ? option.getVerdict() : Verdict.CANNOT_TELL;
            String title = Objects.requireNonNullElse(option.getTitle(), OptionChoice.name(option));
            if (verdict == Verdict.DOES_NOT_SUIT) {
                all.add(text("caution.doesNotSuit", title));
            } else if (verdict == Verdict.CANNOT_TELL) {
                all.add(text("caution.cannotTell", title));
            }
        }
        all.add(text("caution.electricity"));
        all.add(text("caution.scalding"));
        boolean vulnerable = survey.getCustomer() != null
                && Boolean.TRUE.equals(survey.getCustomer().getVulnerable());
        all.add(text(vulnerable ? "caution.vulnerable" : "caution.children"));
        all.add(text("caution.codes"));
        if (request.assessment().getRulesNote() != null) {
            all.add(request.assessment().getRulesNote());
        }
        return all;
    }

    private String text(String key, Object... arguments) {
        return QuoteException.MESSAGES.get(locale, key, arguments);
    }
}
