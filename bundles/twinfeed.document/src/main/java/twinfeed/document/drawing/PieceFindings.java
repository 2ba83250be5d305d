// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.document.Figures;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;

/**
 * Which findings are about which piece of the feeds. A finding that names a governing piece is about that one. Any other is
 * about the last reading of the electrical feed that its check asks for; a check of the water or of nothing but the heater is
 * about the unit where it asks for the heater's data, else about the last reading of the water. So a third party's checks find
 * their place without being known here.
 */
public final class PieceFindings {
    /** Prefix under which findings about the unit stand. */
    static final String UNIT = "heater";

    /** Prefix of the electrical feed. */
    static final String POWER = "survey.electricity";

    /** Prefix of the water feed. */
    static final String WATER = "survey.water";

    /** Prefix of its pipes. */
    static final String PIPES = "survey.water.segments";

    /** Prefix of the taps on them. */
    static final String TAPS = "survey.water.drawOffs";

    /** Where findings can stand, besides at a piece with a name: the longest one that begins a reading's path. */
    private static final List<String> ANCHORS = List.of(
            UNIT,
            WATER,
            PIPES,
            TAPS,
            POWER,
            POWER + ".circuit",
            POWER + ".circuit.device",
            POWER + ".circuit.rcd",
            POWER + ".circuit.segments",
            POWER + ".circuit.isolator");

    private record Placed(String subject, String place, Finding finding, int rank, double closeness) {}

    private final List<Placed> all = new ArrayList<>();
    private final Figures figures;
    private final Locale locale;
    private final String binding;

    private PieceFindings(Locale locale, String binding) {
        this.figures = new Figures(locale);
        this.locale = locale;
        this.binding = binding;
    }

    /** No findings at all. */
    public static PieceFindings none(Locale locale) {
        return new PieceFindings(locale, "");
    }

    /**
     * The findings of one option.
     *
     * @param option the option
     * @param names names of the survey's pieces; a finding that names something else is placed by its readings
     */
    public static PieceFindings of(OptionAssessment option, Set<String> names, Locale locale) {
        return of(option, option.getFindings(), names, locale);
    }

    static PieceFindings of(OptionAssessment option, List<Finding> answers, Set<String> names, Locale locale) {
        PieceFindings findings = new PieceFindings(locale, binding(option, answers));
        for (Finding finding : answers) {
            if (finding.getOutcome() != Outcome.NOT_APPLICABLE) {
                findings.all.add(placed(finding, names));
            }
        }
        return findings;
    }

    /** The check that decides; none where it stood in the way and the work has put that right. */
    private static String binding(OptionAssessment option, List<Finding> answers) {
        String binding = option.getBinding() == null ? "" : option.getBinding();
        boolean mended = passes(answers, binding) && !passes(option.getFindings(), binding);
        return mended ? "" : binding;
    }

    private static boolean passes(List<Finding> findings, String key) {
        return findings.stream()
                .anyMatch(finding -> finding.getKey().equals(key) && finding.getOutcome() == Outcome.PASSES);
    }

    private static Placed placed(Finding finding, Set<String> names) {
        String subject = finding.getSubject();
        return new Placed(
                subject != null && names.contains(subject) ? subject : "",
                place(finding.getNeeds()),
                finding,
                rank(finding),
                closeness(finding));
    }

    static String place(List<String> needs) {
        String path = last(needs, POWER)
                .or(() -> last(needs, UNIT))
                .or(() -> last(needs, WATER))
                .orElse("");
        return ANCHORS.stream()
                .filter(path::startsWith)
                .max(Comparator.comparingInt(String::length))
                .orElse("");
    }

    private static Optional<String> last(List<String> needs, String prefix) {
        return needs.stream().filter(need -> need.startsWith(prefix)).reduce((first, second) -> second);
    }

    private static int rank(Finding finding) {
        boolean deciding = Check.deciding(finding.getKind());
        return switch (finding.getOutcome()) {
            case FAILS -> deciding ? 0 : 2;
            case CANNOT_TELL, NOT_CHECKED, TOO_CLOSE -> deciding ? 1 : 3;
            default -> 4;
        };
    }

    private static double closeness(Finding finding) {
        Double margin = finding.getMargin();
        Double limit = finding.getLimit();
        return margin == null || limit == null ? Double.MAX_VALUE : margin / Math.max(Math.abs(limit), 1e-9);
    }

    /**
     * The finding that bears hardest on a piece.
     *
     * @param subject its name in the survey, by which findings may name it; null if it has none
     * @param anchors what else stands there
     * @return null if no finding is about it
     */
    @Nullable
    PieceAnswer answer(@Nullable String subject, List<String> anchors) {
        return all.stream()
                .filter(each -> about(each, subject, anchors))
                .min(Comparator.comparing(
                                (Placed each) -> !each.finding.getKey().equals(binding))
                        .thenComparingInt(Placed::rank)
                        .thenComparingDouble(Placed::closeness))
                .map(each -> answer(each.finding))
                .orElse(null);
    }

    private static boolean about(Placed placed, @Nullable String subject, List<String> anchors) {
        return placed.subject.isEmpty() ? anchors.contains(placed.place) : placed.subject.equals(subject);
    }

    private PieceAnswer answer(Finding finding) {
        String margin = figures.margin(finding.getMargin(), finding.getLimit(), finding.getUnit());
        return new PieceAnswer(
                Mark.of(finding, locale),
                finding.getTitle(),
                margin,
                finding.getKey().equals(binding));
    }
}
