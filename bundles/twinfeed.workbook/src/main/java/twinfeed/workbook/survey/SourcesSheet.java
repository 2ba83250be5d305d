// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.survey;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Assumption;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Step;
import twinfeed.model.quote.Quote;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.SheetWriter;

/** Where everything comes from: rules, tables, prices, program; and every assumption, caution and term in full. */
public final class SourcesSheet {
    private final QuoteSheets sheets;
    private final SheetWriter page;

    /** How the tolerances of readings and figures are taken where the chance of a check is worked out. */
    private static final List<String> TOLERANCES = List.of(
            "tolerance.stated",
            "tolerance.instrument",
            "tolerance.gauge",
            "tolerance.power",
            "tolerance.tables",
            "tolerance.method",
            "tolerance.error");

    /** The sheet's writer. */
    public SourcesSheet(QuoteSheets sheets, SheetWriter page) {
        this.sheets = sheets;
        this.page = page;
    }

    /** Writes it. */
    public void write() {
        page.columns(30, 78);
        sheets.head(page, "sources", 1);
        origin();
        Quote quote = sheets.quote();
        Assessment assessment = sheets.document().assessment();
        list("sources.cautions", quote.getCautions());
        Set<String> assumptions = new LinkedHashSet<>(quote.getAssumptions());
        assessment.getAssumptions().stream().map(Assumption::getText).forEach(assumptions::add);
        list("sources.assumptions", assumptions);
        list("sources.exclusions", quote.getExclusions());
        list("sources.terms", quote.getTerms());
        list("sources.tolerances", TOLERANCES.stream().map(sheets.words()::get).toList());
        page.setup().onePage().printOnly(page.rowIndex(), 1);
        list("sources.tables", citations(assessment));
    }

    private void origin() {
        Quote quote = sheets.quote();
        Assessment assessment = sheets.document().assessment();
        band("sources.origin");
        entry("sources.program", sheets.document().programVersion());
        entry("sources.rules", assessment.getRules());
        entry("sources.rulesNote", assessment.getRulesNote());
        entry("sources.book", quote.getBookTitle());
        if (quote.getBookDate() != null) {
            label("sources.bookDate")
                    .date(
                            1,
                            quote.getBookDate(),
                            SheetStyles.LINE
                                    .format(sheets.formats().date())
                                    .align(twinfeed.workbook.writer.CellStyle.Alignment.LEFT));
        }
        entry("sources.bookNote", quote.getBookNote());
        String rounding = quote.getRounding() == null ? "line" : quote.getRounding();
        String words = sheets.words().find("rounding." + rounding);
        entry("sources.rounding", words == null ? rounding : words);
        entry("sources.fingerprint", sheets.document().fingerprint());
    }

    private void entry(String key, @Nullable String text) {
        if (text != null && !text.isEmpty()) {
            label(key).text(1, text, SheetStyles.LINE);
        }
    }

    private SheetWriter label(String key) {
        return page.row().text(0, sheets.words().get(key), SheetStyles.LINE_MUTED);
    }

    private void band(String key) {
        page.gap(8);
        page.row().text(0, 1, sheets.words().get(key), SheetStyles.BAND);
    }

    private void list(String key, Iterable<String> entries) {
        boolean first = true;
        for (String entry : entries) {
            if (first) {
                band(key);
                first = false;
            }
            page.row().text(0, 1, entry, SheetStyles.LINE);
        }
    }

    /** A step may name the piece of the house that it is about; that is no source. */
    private List<String> citations(Assessment assessment) {
        Set<String> citations = new TreeSet<>();
        List<OptionAssessment> options = assessment.getOptions();
        Stream.concat(
                        options.stream().flatMap(option -> option.getFindings().stream()),
                        options.stream().flatMap(option -> option.getAfterWork().stream()))
                .forEach(finding -> {
                    add(citations, finding.getSource());
                    finding.getSteps().stream().map(Step::getSource).forEach(source -> add(citations, source));
                });
        citations.removeAll(names());
        return List.copyOf(citations);
    }

    private Set<String> names() {
        Set<String> names = new HashSet<>();
        sheets.document().survey().eAllContents().forEachRemaining(element -> {
            EStructuralFeature name = element.eClass().getEStructuralFeature("name");
            if (name != null && element.eGet(name) instanceof String text) {
                names.add(text);
            }
        });
        return names;
    }

    private static void add(Set<String> citations, @Nullable String source) {
        if (source != null && !source.isBlank()) {
            citations.add(source.strip());
        }
    }
}
