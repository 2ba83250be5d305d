// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.jobsheet;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Column;
import twinfeed.document.JobSheet.Kind;
import twinfeed.document.JobSheet.Section;
import twinfeed.document.JobSheet.Table;
import twinfeed.document.JobSheet.Tone;
import twinfeed.document.QuoteLetter.Said;
import twinfeed.document.Titles;
import twinfeed.document.picture.Picture;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.Pictures;
import twinfeed.workbook.writer.SheetWriter;

/** The job sheet, to be filled in on the screen or by pen. */
public final class JobSheetWriter {
    /** As many narrow columns as a table's shares are cut into. */
    private static final int COLUMNS = 20;

    private static final int LAST = COLUMNS - 1;
    private static final double COLUMN_DIGITS = 4.9;
    private static final double PEN_PT = 20;
    private static final double NOTES_PT = 62;
    private static final double LOGO_PT = 40;

    private static final CellStyle BOX =
            SheetStyles.BODY.border(CellStyle.Border.BOX).fill(CellStyle.Fill.INPUT);

    private final SheetWriter page;
    private final JobSheet job;

    /** The sheet's writer. */
    public JobSheetWriter(SheetWriter page, JobSheet job) {
        this.page = page;
        this.job = job;
    }

    /**
     * Writes it.
     *
     * @throws IOException if the firm's logo cannot be read
     */
    public void write() throws IOException {
        double[] widths = new double[COLUMNS];
        Arrays.fill(widths, COLUMN_DIGITS);
        page.columns(widths).breakPages();
        head();
        facts();
        page.row().text(0, LAST, job.conclusion().label(), SheetStyles.HEADING).keepWithNext();
        page.row().text(0, LAST, job.conclusion().text(), SheetStyles.BOLD.fill(CellStyle.Fill.SOFT));
        job.sections().forEach(this::section);
        sign();
    }

    private void head() throws IOException {
        Firm firm = job.firm();
        Picture logo = firm.picture();
        if (!firm.name().isEmpty() || logo != null) {
            page.row().text(0, COLUMNS / 2, firm.name(), SheetStyles.BOLD);
            page.text(
                    COLUMNS / 2 + 1,
                    LAST,
                    Titles.lines(firm.headContact()),
                    SheetStyles.MUTED.align(CellStyle.Alignment.RIGHT));
        }
        page.row().text(0, COLUMNS / 2, job.heading(), SheetStyles.TITLE);
        if (logo != null) {
            page.height(LOGO_PT + 4);
            Pictures.put(page, logo, COLUMNS / 2 + 1, page.width(COLUMNS / 2 + 1, LAST), LOGO_PT, true);
        }
        page.gap(4);
    }

    private void facts() {
        List<Said> facts = job.facts();
        int wide = COLUMNS / facts.size();
        page.row();
        for (int at = 0; at < facts.size(); at++) {
            page.text(at * wide, at * wide + wide - 1, facts.get(at).label(), SheetStyles.SMALL);
        }
        page.row();
        for (int at = 0; at < facts.size(); at++) {
            page.text(at * wide, at * wide + wide - 1, facts.get(at).text(), SheetStyles.BODY);
        }
        page.gap(4);
    }

    private void section(Section section) {
        page.gap(6).keepWithNext();
        CellStyle look = look(section.tone());
        page.row()
                .text(
                        0,
                        LAST,
                        section.title(),
                        section.tone() == Tone.PLAIN ? SheetStyles.HEADING : look.lettering(CellStyle.Lettering.BOLD))
                .keepWithNext();
        section.sentences().forEach(sentence -> page.row().text(0, LAST, sentence, look));
        Table table = section.table();
        if (table != null) {
            page.keepWithNext();
            table(table);
        }
    }

    private static CellStyle look(Tone tone) {
        return switch (tone) {
            case PLAIN -> SheetStyles.BODY;
            case NEXT -> SheetStyles.BODY.fill(CellStyle.Fill.SOFT);
            case SMALL -> SheetStyles.SMALL;
            case CAUTION -> SheetStyles.BODY.fill(CellStyle.Fill.DOUBT);
        };
    }

    private void table(Table table) {
        int[] starts = starts(table.columns());
        if (table.columns().stream().anyMatch(column -> !column.head().isEmpty())) {
            page.row();
            for (int at = 0; at < table.columns().size(); at++) {
                Column column = table.columns().get(at);
                page.text(starts[at], starts[at + 1] - 1, column.head(), SheetStyles.HEAD.align(side(column.kind())));
            }
            page.keepWithNext();
        }
        table.rows().forEach(row -> row(table.columns(), starts, row));
    }

    private void row(List<Column> columns, int[] starts, List<String> texts) {
        page.row();
        boolean pen = columns.stream().anyMatch(column -> column.kind() == Kind.BOX);
        page.height(columns.size() == 1 ? NOTES_PT : pen ? PEN_PT : 0);
        for (int at = 0; at < columns.size(); at++) {
            Kind kind = columns.get(at).kind();
            String text = kind == Kind.TICK ? JobSheet.box(texts.get(at)) : texts.get(at);
            CellStyle look = kind == Kind.BOX ? BOX : SheetStyles.LINE.align(side(kind));
            page.text(starts[at], starts[at + 1] - 1, text, look);
        }
    }

    private static CellStyle.Alignment side(Kind kind) {
        return switch (kind) {
            case FIGURE -> CellStyle.Alignment.RIGHT;
            case SIGN, TICK -> CellStyle.Alignment.CENTRE;
            case TEXT, BOX -> CellStyle.Alignment.LEFT;
        };
    }

    /** First columns of a table's columns, and the one behind the last: at least one for each. */
    private static int[] starts(List<Column> columns) {
        int sum = columns.stream().mapToInt(Column::share).sum();
        int[] starts = new int[columns.size() + 1];
        int shares = 0;
        for (int at = 0; at < columns.size(); at++) {
            shares += columns.get(at).share();
            int behind = Math.round((float) shares * COLUMNS / sum);
            starts[at + 1] = Math.max(starts[at] + 1, behind);
        }
        starts[columns.size()] = COLUMNS;
        return starts;
    }

    private void sign() {
        List<String> fields = job.fields();
        int wide = COLUMNS / fields.size();
        page.gap(8).keepWithNext();
        page.row().height(34);
        for (int at = 0; at < fields.size(); at++) {
            int last = at == fields.size() - 1 ? LAST : at * wide + wide - 1;
            page.text(
                    at * wide,
                    last,
                    fields.get(at),
                    SheetStyles.BODY.border(CellStyle.Border.BOX).lettering(CellStyle.Lettering.SMALL));
        }
    }
}
