// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.curves;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.FeedProfile;
import twinfeed.document.DocumentTexts;
import twinfeed.document.OfferedFindings;
import twinfeed.document.QuoteDocument;
import twinfeed.document.Titles;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Series;
import twinfeed.model.quote.QuoteOption;

/**
 * The curves of an assessment brought together by check: those of the present unit and of the heaters that are quoted. A curve that
 * several of them share, such as the supply's, is shown once.
 */
final class Curves {
    /** Two curves are one if their points lie as close as this, by their size. */
    private static final double SAME = 0.005;

    /** More curves in one chart nobody can tell apart. */
    static final int MOST = 6;

    private final DocumentTexts words;
    private final QuoteDocument document;

    /**
     * A curve.
     *
     * @param name what it is called in its chart
     * @param series its points
     */
    record Curve(String name, Series series) {}

    /**
     * The curves of one check.
     *
     * @param title the check's title
     * @param curves its curves, all with labels or all without
     */
    record Group(String title, List<Curve> curves) {
        boolean labelled() {
            return !curves.get(0).series().getLabels().isEmpty();
        }
    }

    private static final MathContext SIX_DIGITS = new MathContext(6);

    /** Group of the flow by month; no check has this key. */
    private static final String MONTHS = "";

    private record Found(OptionAssessment option, Finding finding, Series series) {
        boolean main() {
            return own(finding).get(0) == series;
        }
    }

    Curves(DocumentTexts words, QuoteDocument document) {
        this.words = words;
        this.document = document;
    }

    /** All groups, the flow by month first. */
    List<Group> groups() {
        Map<String, List<Found>> byCheck = new LinkedHashMap<>();
        byCheck.put(MONTHS, new ArrayList<>());
        for (OptionAssessment option : shown()) {
            for (Finding finding : OfferedFindings.findings(option)) {
                for (Series series : own(finding)) {
                    String key = finding.getKey() + (series.getLabels().isEmpty() ? "" : "#");
                    String group = finding.getTopic() == CheckTopic.MONTHLY_FLOW ? MONTHS : key;
                    byCheck.computeIfAbsent(group, any -> new ArrayList<>()).add(new Found(option, finding, series));
                }
            }
        }
        return byCheck.values().stream()
                .filter(found ->
                        found.stream().anyMatch(one -> one.series().getY().size() > 1))
                .map(this::group)
                .toList();
    }

    /** The curves of a finding without those along a supply, which the drawing of the house shows. */
    private static List<Series> own(Finding finding) {
        return finding.getSeries().stream()
                .filter(series -> !FeedProfile.is(series.getKey()))
                .toList();
    }

    private List<OptionAssessment> shown() {
        Set<String> heaters = new LinkedHashSet<>();
        document.quote().getOptions().stream().map(QuoteOption::getHeaterId).forEach(heaters::add);
        return document.assessment().getOptions().stream()
                .filter(option -> Titles.present(option) || heaters.isEmpty() || heaters.contains(option.getHeaterId()))
                .toList();
    }

    private Group group(List<Found> found) {
        List<Found> kept = new ArrayList<>();
        Set<Series> shared = new LinkedHashSet<>();
        for (Found one : found) {
            Found same = same(one, kept);
            if (same == null) {
                kept.add(one);
            } else if (same.series().getKey().equals(one.series().getKey())) {
                shared.add(same.series());
            }
        }
        boolean severalKeys =
                kept.stream().map(one -> one.series().getKey()).distinct().count() > 1;
        List<Curve> curves = kept.stream()
                .limit(MOST)
                .map(one -> new Curve(name(one, shared.contains(one.series()), severalKeys), plain(one.series())))
                .toList();
        String title = found.get(0).finding().getTitle();
        return new Group(title == null ? found.get(0).finding().getKey() : title, curves);
    }

    /** With six digits, which no chart shows more of; in full, the points of curves would take more room than the prices. */
    private static Series plain(Series series) {
        Series plain = EcoreUtil.copy(series);
        plain.getX().replaceAll(Curves::sixDigits);
        plain.getY().replaceAll(Curves::sixDigits);
        return plain;
    }

    private static Double sixDigits(Double value) {
        return Double.isFinite(value) ? new BigDecimal(value).round(SIX_DIGITS).doubleValue() : value;
    }

    private static @Nullable Found same(Found one, List<Found> kept) {
        for (Found other : kept) {
            boolean twoHeaters =
                    one.main() && other.main() && own(one.finding()).size() < 3;
            if (!twoHeaters && same(one.series(), other.series())) {
                return other;
            }
        }
        return null;
    }

    private static boolean same(Series left, Series right) {
        return left.getLabels().equals(right.getLabels())
                && near(left.getX(), right.getX())
                && near(left.getY(), right.getY());
    }

    private static boolean near(List<Double> left, List<Double> right) {
        if (left.size() != right.size()) {
            return false;
        }
        for (int at = 0; at < left.size(); at++) {
            double size = Math.max(Math.abs(left.get(at)), Math.abs(right.get(at)));
            if (Math.abs(left.get(at) - right.get(at)) > SAME * size) {
                return false;
            }
        }
        return true;
    }

    private String name(Found one, boolean shared, boolean severalKeys) {
        String title = one.series().getTitle() == null
                ? one.series().getKey()
                : one.series().getTitle();
        String option = Titles.option(words, one.option());
        if (shared) {
            return title;
        }
        boolean plain = !severalKeys || (one.main() && own(one.finding()).size() < 3);
        return plain ? option : title + ": " + option;
    }
}
