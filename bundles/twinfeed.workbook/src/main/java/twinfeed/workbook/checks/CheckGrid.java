// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Titles;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.workbook.sheet.OutcomeText;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/**
 * The grid of heaters by checks, the checks of one class together; more heaters than fit side by side continue in a further grid
 * below. Checks that every one of them passes, and those that do not arise for any, are only named.
 */
final class CheckGrid {
    private static final int ACROSS = 7;

    /** Wider cells than three columns do not help anybody. */
    private static final int WIDEST = 3;

    /** A row of two lines, and what a page holds at the scale at which the sheet prints, in points. */
    private static final double ROW_PT = 26;

    private static final double PAGE_PT = 700;

    private final QuoteSheets sheets;
    private final SheetWriter page;
    private final OutcomeText answers;
    private final LiveVerdict live;
    private final List<String> changes = new ArrayList<>();
    private double pageStart;
    private int span = 1;

    CheckGrid(QuoteSheets sheets, SheetWriter page, OutcomeText answers, LiveVerdict live) {
        this.sheets = sheets;
        this.page = page;
        this.answers = answers;
        this.live = live;
    }

    /** The cells that count the answers which are no longer those of the quote. */
    List<String> changes() {
        return changes;
    }

    void write(List<OptionAssessment> options) {
        for (int from = 0; from < options.size(); from += ACROSS) {
            if (from > 0) {
                breakPage();
            }
            block(options.subList(from, Math.min(options.size(), from + ACROSS)));
        }
    }

    private void breakPage() {
        page.setup().breakAfter(page.rowIndex());
        pageStart = page.heightSum();
    }

    private void block(List<OptionAssessment> options) {
        span = Math.max(1, Math.min(WIDEST, ACROSS / options.size()));
        heads(sheets.words().get("grid.check"), options);
        page.row().text(0, sheets.words().get("grid.verdict"), SheetStyles.LINE.lettering(CellStyle.Lettering.BOLD));
        List<@Nullable String> counts = new ArrayList<>();
        options.forEach(option -> counts.add(live.changes(option)));
        int rowsToCount = worked(options) ? 2 : 1;
        for (int at = 0; at < options.size(); at++) {
            verdict(at, options.get(at), counts.get(at) == null ? null : page.addressBelow(first(at), rowsToCount));
        }
        work(options);
        changed(counts);
        List<CheckRow> elsewhere = new ArrayList<>();
        List<CheckRow> passed = new ArrayList<>();
        Map<FindingClass, List<CheckRow>> byClass = rows(options);
        List<Map.Entry<FindingClass, List<CheckRow>>> kinds = new ArrayList<>(byClass.entrySet());
        kinds.sort(Comparator.comparing(kind -> kind.getValue().stream().noneMatch(CheckRow::fails)));
        for (Map.Entry<FindingClass, List<CheckRow>> entry : kinds) {
            FindingClass kind = entry.getKey();
            List<CheckRow> checks = new ArrayList<>(entry.getValue());
            checks.sort(Comparator.comparing(check -> !check.fails()));
            List<CheckRow> open = checks.stream()
                    .filter(check -> check.arises() && !check.passes())
                    .toList();
            checks.stream().filter(CheckRow::passes).forEach(passed::add);
            checks.stream().filter(check -> !check.arises()).forEach(elsewhere::add);
            group(kind, open, options);
        }
        named("grid.passed", passed);
        named("grid.notArising", elsewhere);
    }

    /**
     * The verdict, which follows where answers can change.
     *
     * @param changes the cell that counts the changed answers; absent where none can change
     */
    private void verdict(int at, OptionAssessment option, @Nullable String changes) {
        String verdict = answers.verdict(option.getVerdict());
        CellStyle look = OutcomeText.look(option.getVerdict(), SheetStyles.LINE.align(CellStyle.Alignment.CENTRE));
        if (changes == null) {
            cell(at, verdict, look);
        } else {
            page.formula(first(at), last(at), live.verdict(option, changes), verdict, look);
        }
    }

    private void changed(List<@Nullable String> counts) {
        page.row().text(0, sheets.words().get("grid.changed"), SheetStyles.LINE_MUTED);
        CellStyle look = SheetStyles.LINE_MUTED.align(CellStyle.Alignment.CENTRE);
        for (int at = 0; at < counts.size(); at++) {
            String count = counts.get(at);
            cell(at, "", look);
            if (count != null) {
                page.formula(first(at), count, 0, look);
                changes.add(page.fullAddress(first(at)));
            }
        }
    }

    private void heads(String title, List<OptionAssessment> options) {
        page.row().text(0, title, SheetStyles.HEAD);
        for (int at = 0; at < options.size(); at++) {
            cell(
                    at,
                    Titles.option(sheets.words(), options.get(at)),
                    SheetStyles.HEAD.align(CellStyle.Alignment.CENTRE));
        }
    }

    private void cell(int at, String text, CellStyle look) {
        page.text(first(at), last(at), text, look);
    }

    private int first(int at) {
        return 1 + at * span;
    }

    private int last(int at) {
        return at * span + span;
    }

    /** Checks by class, in the order in which the options name them. */
    private static Map<FindingClass, List<CheckRow>> rows(List<OptionAssessment> options) {
        Map<String, CheckRow> checks = new LinkedHashMap<>();
        for (OptionAssessment option : options) {
            for (Finding finding : option.getFindings()) {
                checks.computeIfAbsent(finding.getKey(), key -> new CheckRow(finding))
                        .add(option, finding);
            }
        }
        Map<FindingClass, List<CheckRow>> byClass = new EnumMap<>(FindingClass.class);
        checks.values().forEach(check -> byClass.computeIfAbsent(check.kind(), kind -> new ArrayList<>())
                .add(check));
        return byClass;
    }

    private void group(FindingClass kind, List<CheckRow> checks, List<OptionAssessment> options) {
        if (checks.isEmpty()) {
            return;
        }
        double used = page.heightSum() - pageStart;
        if (used > PAGE_PT / 3 && used + checks.size() * ROW_PT > PAGE_PT) {
            breakPage();
        }
        page.gap(5);
        heads(sheets.words().get("class." + kind.getLiteral()), options);
        for (CheckRow check : checks) {
            page.row().text(0, check.title(), SheetStyles.LINE);
            for (int at = 0; at < options.size(); at++) {
                answer(at, options.get(at), check);
            }
        }
    }

    private void answer(int at, OptionAssessment option, CheckRow check) {
        CellStyle look = SheetStyles.LINE.align(CellStyle.Alignment.CENTRE);
        Finding finding = check.of(option);
        if (finding == null) {
            cell(at, "", look);
        } else {
            cell(at, answer(option, finding), OutcomeText.look(finding, look));
        }
    }

    private String answer(OptionAssessment option, Finding finding) {
        List<String> lines = new ArrayList<>(List.of(answers.outcome(finding)));
        Double margin = finding.getMargin();
        if (margin != null) {
            String number = (margin >= 0 ? "+" : "") + sheets.words().number(margin);
            boolean bare = finding.getUnit() == null || finding.getUnit().isEmpty();
            lines.add(bare ? number : number + " " + finding.getUnit());
        }
        if (mended(option, finding)) {
            lines.add(sheets.words().get("check.withWork"));
        }
        return String.join("\n", lines);
    }

    /** Whether what fails now passes with the work that is named. */
    private static boolean mended(OptionAssessment option, Finding finding) {
        boolean now = finding.getOutcome() == Outcome.PASSES || finding.getOutcome() == Outcome.NOT_APPLICABLE;
        return !now
                && option.getAfterWork().stream()
                        .anyMatch(after -> finding.getKey().equals(after.getKey())
                                && after.isSetOutcome()
                                && after.getOutcome() == Outcome.PASSES);
    }

    private static boolean worked(List<OptionAssessment> options) {
        return options.stream().anyMatch(option -> !option.getRemedies().isEmpty());
    }

    private void work(List<OptionAssessment> options) {
        if (!worked(options)) {
            return;
        }
        page.row().text(0, sheets.words().get("grid.work"), SheetStyles.LINE.lettering(CellStyle.Lettering.BOLD));
        for (int at = 0; at < options.size(); at++) {
            String work =
                    options.get(at).getRemedies().stream().map(Remedy::getTitle).collect(Collectors.joining(";\n"));
            cell(at, work, SheetStyles.LINE.lettering(CellStyle.Lettering.SMALL));
        }
    }

    /** Checks that need no row: only their titles. */
    private void named(String key, List<CheckRow> checks) {
        if (!checks.isEmpty()) {
            page.gap(5);
            String titles = checks.stream().map(CheckRow::title).collect(Collectors.joining(" · "));
            page.row().text(0, ACROSS, sheets.words().get(key, "checks", titles), SheetStyles.MUTED);
        }
    }
}
