// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.quote;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Firm;
import twinfeed.document.QuoteLetter;
import twinfeed.document.Titles;
import twinfeed.document.picture.Picture;
import twinfeed.workbook.formula.LiveFormula;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.Pictures;
import twinfeed.workbook.writer.SheetWriter;

/** What a customer reads: one page of A4. */
public final class QuoteSheet {
    /** Sixteen narrow columns, which divide evenly by one, two, three and four options beside a label of four. */
    static final int COLUMNS = 16;

    static final int LAST = COLUMNS - 1;
    static final int HALF = COLUMNS / 2;

    /** A page that is a little too long is printed a little smaller; by this much nobody minds. */
    private static final double SHRINK = 1.05;

    /** Height of an A4 page between its margins, in points. */
    private static final double PAGE_HEIGHT = (842 - 2 * 0.6 * 72) * SHRINK;

    private static final double LOGO_PT = 44;

    private final QuoteSheets sheets;
    private final SheetWriter page;
    private final QuoteLetter letter;
    private final List<ItemsSheet.Totals> totals;
    private final List<String> changes;

    /**
     * The sheet's writer.
     *
     * @param totals where the totals of each option stand
     * @param changes the cells that count the answers which are no longer those of the quote
     */
    public QuoteSheet(QuoteSheets sheets, SheetWriter page, List<ItemsSheet.Totals> totals, List<String> changes) {
        this.sheets = sheets;
        this.page = page;
        this.letter = sheets.letter().write();
        this.totals = totals;
        this.changes = List.copyOf(changes);
    }

    /**
     * Writes it.
     *
     * @throws IOException if the firm's logo cannot be read
     */
    public void write() throws IOException {
        page.setup().onePage();
        double[] widths = new double[COLUMNS];
        java.util.Arrays.fill(widths, 6.1);
        page.columns(widths);
        letterhead();
        people();
        part(
                letter.dangers(),
                SheetStyles.BODY.lettering(CellStyle.Lettering.BAD).fill(CellStyle.Fill.BAD));
        finding();
        part(letter.toMeasure(), SheetStyles.BODY.fill(CellStyle.Fill.DOUBT));
        new OptionsTable(page, letter, sheets.formats(), totals).write();
        letter.instead().forEach(each -> part(each, SheetStyles.BODY));
        if (letter.acceptance() != null) {
            new AcceptanceBox(page, letter.acceptance()).write();
        }
        double left = PAGE_HEIGHT - page.heightSum();
        new SmallPrint(sheets.words(), page).write(letter.smallPrint(), left);
    }

    private void letterhead() throws IOException {
        Firm firm = sheets.document().firm();
        page.row().text(0, HALF + 1, firm.name(), SheetStyles.TITLE);
        logo(firm);
        page.row().text(0, HALF - 1, Titles.lines(firm.address()), SheetStyles.MUTED);
        page.text(HALF, LAST, Titles.lines(firm.headContact()), SheetStyles.MUTED.align(CellStyle.Alignment.RIGHT));
        page.row()
                .text(0, LAST, "", SheetStyles.BODY.border(CellStyle.Border.BELOW))
                .height(5);
        page.gap(5);
    }

    private void logo(Firm firm) throws IOException {
        Picture logo = firm.picture();
        page.text(HALF + 2, LAST, "", SheetStyles.TITLE);
        if (logo != null) {
            page.height(LOGO_PT + 4);
            Pictures.put(page, logo, HALF + 2, page.width(HALF + 2, LAST), LOGO_PT, true);
        }
    }

    private void people() {
        page.row().text(0, HALF - 1, letter.reference(), SheetStyles.HEADING);
        day(letter.days().get(0));
        page.row();
        if (changes.isEmpty()) {
            page.text(0, HALF - 1, letter.state(), SheetStyles.MUTED);
        } else {
            page.formula(0, HALF - 1, state(), letter.state(), SheetStyles.MUTED);
        }
        if (letter.days().size() > 1) {
            day(letter.days().get(1));
        }
        page.gap(4);
        page.row().text(0, HALF - 1, letter.customer().label(), SheetStyles.SMALL);
        page.text(HALF, LAST, letter.site().label(), SheetStyles.SMALL);
        page.row().text(0, HALF - 1, letter.customer().text(), SheetStyles.BODY);
        page.text(HALF, LAST, letter.site().text(), SheetStyles.BODY);
        page.gap(5);
    }

    /** The state of the quote, as long as nobody changes a reading so that answers change. */
    private String state() {
        return "IF(" + String.join("+", changes) + "=0," + LiveFormula.text(letter.state()) + ","
                + LiveFormula.text(sheets.words().get("state.changed")) + ")";
    }

    private void day(QuoteLetter.Day day) {
        page.text(HALF, HALF + 4, day.label(), SheetStyles.MUTED);
        CellStyle look = SheetStyles.BODY.format(sheets.formats().date()).align(CellStyle.Alignment.LEFT);
        page.span(HALF + 5, LAST, look).date(HALF + 5, day.day(), look);
    }

    /** A part that is never cut, under its heading. */
    private void part(QuoteLetter.@Nullable Part part, CellStyle look) {
        if (part == null) {
            return;
        }
        page.row().text(0, LAST, part.title(), look.lettering(CellStyle.Lettering.BOLD));
        part.entries().forEach(entry -> page.row().text(0, LAST, "•  " + entry, look));
        page.gap(5);
    }

    private void finding() {
        page.row().text(0, LAST, letter.finding().label(), SheetStyles.HEADING);
        page.row().text(0, LAST, letter.finding().text(), SheetStyles.BODY.fill(CellStyle.Fill.SOFT));
        page.gap(6);
    }
}
