// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.check.Offers;
import twinfeed.model.survey.Survey;

/** Which heaters a quote offers. */
final class OptionChoice {
    private OptionChoice() {}

    /**
     * The heaters asked for, or else at most four: those that suit, then those that suit with work, of each the ones nearest to
     * the power asked for first. Where nothing suits but readings are missing, the undecided ones, marked as such. A heater that
     * does not suit is never offered unasked: where none other is left, there is no option, and the quote says why. A heater like the one
     * that is there has its place among them if it suits, and a sound repair stands beside them.
     *
     * @throws QuoteException if a heater asked for was not assessed
     */
    static List<OptionAssessment> of(QuoteRequest request) {
        return request.chosen().isEmpty() ? byVerdict(request) : asked(request.assessment(), request.chosen());
    }

    /** The name under which an option is chosen and extras are added to it. */
    static String name(OptionAssessment option) {
        return present(option) ? QuoteRequest.PRESENT : Objects.requireNonNullElse(option.getHeaterId(), "");
    }

    /** Whether it is the unit that is there. */
    static boolean present(OptionAssessment option) {
        return Boolean.TRUE.equals(option.getPresent());
    }

    private static List<OptionAssessment> asked(Assessment assessment, List<String> names) {
        if (names.size() > QuoteRequest.MOST_OPTIONS) {
            throw new QuoteException("tooManyOptions", names.size(), QuoteRequest.MOST_OPTIONS);
        }
        List<OptionAssessment> options = new ArrayList<>();
        for (String name : names) {
            OptionAssessment option = find(assessment, name);
            if (options.contains(option)) {
                throw new QuoteException("optionTwice", name);
            }
            options.add(option);
        }
        return options;
    }

    private static OptionAssessment find(Assessment assessment, String name) {
        return assessment.getOptions().stream()
                .filter(option -> name(option).equals(name))
                .findFirst()
                .orElseThrow(() -> new QuoteException(
                        "unknownOption",
                        name,
                        assessment.getOptions().stream().map(OptionChoice::name).collect(Collectors.joining(", "))));
    }

    private static boolean decided(OptionAssessment option) {
        return Offers.suits(option.getVerdict());
    }

    private static List<OptionAssessment> byVerdict(QuoteRequest request) {
        List<OptionAssessment> offered = request.assessment().getOptions().stream()
                .filter(option -> !present(option) && option.getVerdict() != Verdict.NOT_CHECKED)
                .filter(option -> option.getVerdict() != Verdict.DOES_NOT_SUIT)
                .toList();
        boolean decided = offered.stream().anyMatch(OptionChoice::decided);
        List<OptionAssessment> ranked = offered.stream()
                .filter(option -> !decided || decided(option))
                .sorted(Comparator.<OptionAssessment>comparingInt(
                                option -> option.getVerdict().getValue())
                        .thenComparingDouble(option -> distanceFromRequest(option, request.survey())))
                .toList();
        Optional<OptionAssessment> present = unit(request.assessment());
        Optional<OptionAssessment> repaired = request.faults().repair() == null ? Optional.empty() : present;
        List<OptionAssessment> chosen = new ArrayList<>(shown(
                ranked,
                present,
                QuoteRequest.MOST_OPTIONS - (int) repaired.stream().count()));
        repaired.ifPresent(chosen::add);
        return chosen;
    }

    /** The first of them; the last place is for a heater like the one that is there, where it would be left out otherwise. */
    private static List<OptionAssessment> shown(
            List<OptionAssessment> ranked, Optional<OptionAssessment> present, int most) {
        List<OptionAssessment> first = ranked.subList(0, Math.min(most, ranked.size()));
        Optional<OptionAssessment> like = present.flatMap(unit -> Offers.likeForLike(unit, ranked));
        if (like.isEmpty() || first.stream().anyMatch(option -> Offers.sameRating(present.get(), option))) {
            return first;
        }
        List<OptionAssessment> with = new ArrayList<>(first.subList(0, most - 1));
        with.add(like.get());
        return with;
    }

    /** The unit that is there. */
    static Optional<OptionAssessment> unit(Assessment assessment) {
        return assessment.getOptions().stream().filter(OptionChoice::present).findFirst();
    }

    /** Distance from the power asked for in W; equal for all where none is asked for, so that the assessment's order stays. */
    static double distanceFromRequest(OptionAssessment option, Survey survey) {
        return survey.getRequestedPower() == null || option.getPowerKw() == null
                ? 0
                : Math.abs(
                        option.getPowerKw() * 1000 - survey.getRequestedPower().si());
    }
}
