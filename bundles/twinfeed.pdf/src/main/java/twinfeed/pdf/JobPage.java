// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.util.List;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Column;
import twinfeed.document.JobSheet.Kind;
import twinfeed.document.JobSheet.Section;
import twinfeed.document.JobSheet.Table;
import twinfeed.document.JobSheet.Tone;

/** The job sheet, section by section, with boxes large enough for a pen. */
final class JobPage {
    /** Height of a line to write on, beside the padding of its cell. */
    static final String PEN_HEIGHT = "5.8mm";

    /** The same where many lines must stand on a page. */
    static final String NARROW_PEN_HEIGHT = "3.9mm";

    private static final String NOTES_HEIGHT = "20mm";
    private static final String FIELD_HEIGHT = "12mm";

    private final PageBody sheet;
    private final FoWriter fo;
    private final JobSheet job;
    private final String penHeight;

    JobPage(PageBody sheet, JobSheet job, String penHeight) {
        this.penHeight = penHeight;
        this.sheet = sheet;
        this.fo = sheet.fo();
        this.job = job;
    }

    void write() {
        fo.block(
                job.heading(),
                "role",
                "H1",
                "font-size",
                sheet.letters(1.6),
                "font-weight",
                "bold",
                "color",
                sheet.accent());
        sheet.beside(
                JobSheetPdf.equal(job.facts().stream()
                        .<FoWriter.Content>map(fact -> () -> {
                            fo.block(fact.label(), "font-size", sheet.letters(0.85), "color", PageBody.muted());
                            fo.block(fact.text(), "padding-end", "1.5mm");
                        })
                        .toList()),
                "space-before",
                sheet.space(0.3));
        sheet.heading(job.conclusion().label());
        fo.block(job.conclusion().text(), sheet.ground(sheet.soft(), "font-weight", "bold"));
        job.sections().forEach(this::section);
        sign();
    }

    private void section(Section section) {
        if (section.tone() == Tone.SMALL) {
            fo.in(
                    "block",
                    () -> {
                        sheet.heading(section.title());
                        section.sentences().forEach(fo::block);
                    },
                    "font-size",
                    sheet.letters(0.85));
        } else if (section.tone() == Tone.PLAIN) {
            sheet.heading(section.title());
            section.sentences().forEach(fo::block);
            table(section.table());
        } else {
            boxed(section);
        }
    }

    private void boxed(Section section) {
        boolean caution = section.tone() == Tone.CAUTION;
        fo.in(
                "block",
                () -> {
                    fo.block(
                            section.title(),
                            "role",
                            "H2",
                            "font-weight",
                            "bold",
                            "keep-with-next.within-page",
                            "always");
                    section.sentences().forEach(sentence -> fo.block(caution ? "•  " + sentence : sentence));
                },
                sheet.ground(
                        caution ? "#FFF1CF" : "#FFFFFF",
                        "border",
                        caution ? "0.5pt solid #E3C776" : "1.2pt solid " + sheet.accent(),
                        "space-before",
                        sheet.space(0.7),
                        "keep-together.within-page",
                        "always"));
    }

    private void table(@org.jspecify.annotations.Nullable Table table) {
        if (table == null) {
            return;
        }
        boolean headed =
                table.columns().stream().anyMatch(column -> !column.head().isEmpty());
        if (!headed) {
            notes();
            return;
        }
        fo.in(
                "table",
                () -> {
                    table.columns()
                            .forEach(column -> fo.empty(
                                    "table-column",
                                    "column-width",
                                    "proportional-column-width(" + column.share() + ")"));
                    fo.in(
                            "table-header",
                            () -> fo.in("table-row", () -> table.columns().forEach(this::head)));
                    fo.in("table-body", () -> table.rows().forEach(row -> row(table.columns(), row)));
                },
                "table-layout",
                "fixed",
                "width",
                "100%",
                "border-collapse",
                "separate",
                "space-before",
                sheet.space(0.2));
    }

    private void notes() {
        fo.in(
                "block-container",
                () -> fo.block(""),
                "height",
                NOTES_HEIGHT,
                "border",
                "0.5pt solid " + PageBody.muted(),
                "margin-left",
                "0mm",
                "margin-right",
                "0mm");
    }

    private void head(Column column) {
        cell(
                column.head(),
                column.kind(),
                "background-color",
                sheet.accent(),
                "color",
                "#FFFFFF",
                "font-weight",
                "bold");
    }

    private void row(List<Column> columns, List<String> texts) {
        boolean pen = columns.stream().anyMatch(column -> column.kind() == Kind.BOX);
        fo.in(
                "table-row",
                () -> {
                    for (int at = 0; at < columns.size(); at++) {
                        value(columns.get(at).kind(), texts.get(at));
                    }
                },
                "keep-together.within-page",
                "always",
                "height",
                pen ? penHeight : "4mm");
    }

    private void value(Kind kind, String text) {
        switch (kind) {
            case TICK ->
                cell(
                        JobSheet.box(text),
                        kind,
                        "font-size",
                        sheet.letters(1.3),
                        "line-height",
                        "1",
                        "border-bottom",
                        PageBody.rule());
            case BOX -> cell(text, kind, "border", "0.5pt solid " + PageBody.muted());
            default -> cell(text, kind, "border-bottom", PageBody.rule());
        }
    }

    private void cell(String text, Kind kind, String... attributes) {
        String side =
                switch (kind) {
                    case FIGURE -> "end";
                    case SIGN, TICK -> "center";
                    default -> "start";
                };
        fo.in(
                "table-cell",
                () -> fo.block(text),
                PageBody.joined(attributes, "padding", "0.7mm 1.2mm", "text-align", side, "display-align", "center"));
    }

    private void sign() {
        String width = 100 / job.fields().size() + "%";
        sheet.beside(
                job.fields().stream()
                        .map(field -> sheet.field(width, field, FIELD_HEIGHT))
                        .toList(),
                "space-before",
                sheet.space(1),
                "keep-together.within-page",
                "always");
    }
}
