// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;

/** The grid of heaters by checks; more heaters than fit side by side continue in a further grid below. */
final class CheckGrid {
    private static final int ACROSS = 7;

    private final Sheets sheets;
    private final Page page;
    private final Answers answers;

    CheckGrid(Sheets sheets, Page page, Answers answers) {
        this.sheets = sheets;
        this.page = page;
        this.answers = answers;
    }

    void write(List<OptionAssessment> options) {
        Map<String, String> checks = checks(options);
        for (int from = 0; from < options.size(); from += ACROSS) {
            if (from > 0) {
                page.gap(10);
            }
            block(options.subList(from, Math.min(options.size(), from + ACROSS)), checks);
        }
    }

    /** Titles by key, in the order in which the options name them. */
    private static Map<String, String> checks(List<OptionAssessment> options) {
        Map<String, String> checks = new LinkedHashMap<>();
        for (OptionAssessment option : options) {
            for (Finding finding : option.getFindings()) {
                checks.putIfAbsent(
                        finding.getKey(), finding.getTitle() == null ? finding.getKey() : finding.getTitle());
            }
        }
        return checks;
    }

    private void block(List<OptionAssessment> options, Map<String, String> checks) {
        page.row().text(0, sheets.words().get("grid.check"), Looking.HEAD);
        Look head = Looking.HEAD.side(Look.Side.CENTRE);
        for (int at = 0; at < options.size(); at++) {
            page.text(at + 1, Titles.option(sheets.words(), options.get(at)), head);
        }
        page.row().text(0, sheets.words().get("grid.verdict"), Looking.LINE.ink(Look.Ink.BOLD));
        for (int at = 0; at < options.size(); at++) {
            verdict(at + 1, options.get(at));
        }
        checks.forEach((key, title) -> check(options, key, title));
        work(options);
    }

    private void verdict(int column, OptionAssessment option) {
        Look look = Looking.LINE.side(Look.Side.CENTRE);
        page.text(column, answers.verdict(option.getVerdict()), Answers.look(option.getVerdict(), look));
    }

    private void check(List<OptionAssessment> options, String key, String title) {
        page.row().text(0, title, Looking.LINE);
        Look look = Looking.LINE.side(Look.Side.CENTRE);
        for (int at = 0; at < options.size(); at++) {
            Finding finding = finding(options.get(at), key);
            if (finding == null) {
                page.text(at + 1, "", look);
            } else {
                page.text(at + 1, cell(options.get(at), finding), Answers.look(finding, look));
            }
        }
    }

    private static @Nullable Finding finding(OptionAssessment option, String key) {
        return option.getFindings().stream()
                .filter(finding -> key.equals(finding.getKey()))
                .findFirst()
                .orElse(null);
    }

    private String cell(OptionAssessment option, Finding finding) {
        String answer = answers.outcome(finding);
        Double margin = finding.getMargin();
        boolean reported = finding.getLimit() == null || finding.getLimit().equals(finding.getValue());
        List<String> lines = new ArrayList<>(List.of(answer));
        if (margin != null && !(margin == 0 && reported)) {
            String number = (margin >= 0 ? "+" : "") + sheets.words().number(margin);
            lines.add(
                    finding.getUnit() == null || finding.getUnit().isEmpty()
                            ? number
                            : number + " " + finding.getUnit());
        }
        if (mended(option, finding)) {
            lines.add(sheets.words().get("check.withWork"));
        }
        return String.join("\n", lines);
    }

    /** Whether what fails now passes with the work that is named below the grid. */
    private static boolean mended(OptionAssessment option, Finding finding) {
        boolean now = finding.getOutcome() == Outcome.PASSES || finding.getOutcome() == Outcome.NOT_APPLICABLE;
        return !now
                && option.getAfterWork().stream()
                        .anyMatch(after -> finding.getKey().equals(after.getKey())
                                && after.isSetOutcome()
                                && after.getOutcome() == Outcome.PASSES);
    }

    private void work(List<OptionAssessment> options) {
        if (options.stream().anyMatch(option -> !option.getRemedies().isEmpty())) {
            page.row().text(0, sheets.words().get("grid.work"), Looking.LINE.ink(Look.Ink.BOLD));
            for (int at = 0; at < options.size(); at++) {
                String work = options.get(at).getRemedies().stream()
                        .map(Remedy::getTitle)
                        .collect(Collectors.joining(";\n"));
                page.text(at + 1, work, Looking.LINE.ink(Look.Ink.SMALL));
            }
        }
    }
}
