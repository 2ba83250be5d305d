// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.io.IOException;
import java.util.List;
import twinfeed.document.Firm;
import twinfeed.document.QuoteLetter;
import twinfeed.document.Titles;
import twinfeed.document.picture.Picture;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;
import twinfeed.workbook.book.Pictures;

/** What a customer reads: one page of A4. */
public final class QuotePage {
    /** Sixteen narrow columns, which divide evenly by one, two, three and four options beside a label of four. */
    static final int COLUMNS = 16;

    static final int LAST = COLUMNS - 1;
    static final int HALF = COLUMNS / 2;

    /** A page that is a little too long is printed a little smaller; by this much nobody minds. */
    private static final double SHRINK = 1.05;

    /** Height of an A4 page between its margins, in points. */
    private static final double PAGE_HEIGHT = (842 - 2 * 0.6 * 72) * SHRINK;

    private static final double LOGO_PT = 44;

    private final Sheets sheets;
    private final Page page;
    private final QuoteLetter letter;
    private final List<ItemsPage.Totals> totals;

    /**
     * The sheet's writer.
     *
     * @param totals where the totals of each option stand
     */
    public QuotePage(Sheets sheets, Page page, List<ItemsPage.Totals> totals) {
        this.sheets = sheets;
        this.page = page;
        this.letter = sheets.letter().write();
        this.totals = totals;
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
        finding();
        new OptionsTable(page, letter, sheets.formats(), totals).write();
        double left = PAGE_HEIGHT - page.heightSum() - AcceptanceBox.HEIGHT;
        new SmallPrint(sheets.words(), page).write(letter.smallPrint(), left);
        new AcceptanceBox(page, letter.acceptance()).write();
    }

    private void letterhead() throws IOException {
        Firm firm = sheets.document().firm();
        page.row().text(0, HALF + 1, firm.name(), Looking.TITLE);
        logo(firm);
        page.row().text(0, HALF - 1, Titles.lines(firm.address()), Looking.MUTED);
        page.text(HALF, LAST, Titles.lines(firm.contact()), Looking.MUTED.side(Look.Side.RIGHT));
        page.row().text(0, LAST, "", Looking.BODY.edge(Look.Edge.BELOW)).height(5);
        page.gap(5);
    }

    private void logo(Firm firm) throws IOException {
        Picture logo = firm.picture();
        page.text(HALF + 2, LAST, "", Looking.TITLE);
        if (logo != null) {
            page.height(LOGO_PT + 4);
            Pictures.put(page, logo, HALF + 2, page.width(HALF + 2, LAST), LOGO_PT, true);
        }
    }

    private void people() {
        page.row().text(0, HALF - 1, letter.reference(), Looking.HEADING);
        day(letter.days().get(0));
        page.row().text(0, HALF - 1, letter.state(), Looking.MUTED);
        day(letter.days().get(1));
        page.gap(4);
        page.row().text(0, HALF - 1, letter.customer().label(), Looking.SMALL);
        page.text(HALF, LAST, letter.site().label(), Looking.SMALL);
        page.row().text(0, HALF - 1, letter.customer().text(), Looking.BODY);
        page.text(HALF, LAST, letter.site().text(), Looking.BODY);
        page.gap(5);
    }

    private void day(QuoteLetter.Day day) {
        page.text(HALF, HALF + 4, day.label(), Looking.MUTED);
        Look look = Looking.BODY.format(sheets.formats().date()).side(Look.Side.LEFT);
        page.span(HALF + 5, LAST, look).date(HALF + 5, day.day(), look);
    }

    private void finding() {
        page.row().text(0, LAST, letter.finding().label(), Looking.HEADING);
        page.row().text(0, LAST, letter.finding().text(), Looking.BODY.paper(Look.Paper.SOFT));
        page.gap(6);
    }
}
