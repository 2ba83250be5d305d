// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.io.IOException;
import java.util.List;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;
import twinfeed.workbook.Firm;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;
import twinfeed.workbook.book.PhotoReader;
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
    private final Words words;
    private final List<ItemsPage.Totals> totals;

    /**
     * The sheet's writer.
     *
     * @param totals where the totals of each option stand
     */
    public QuotePage(Sheets sheets, Page page, List<ItemsPage.Totals> totals) {
        this.sheets = sheets;
        this.page = page;
        this.words = sheets.words();
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
        new OptionsTable(sheets, page, totals).write();
        double left = PAGE_HEIGHT - page.heightSum() - AcceptanceBox.HEIGHT;
        new SmallPrint(sheets, page).write(left);
        new AcceptanceBox(sheets, page).write();
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
        byte[] logo = firm.logo();
        page.text(HALF + 2, LAST, "", Looking.TITLE);
        if (logo != null) {
            page.height(LOGO_PT + 4);
            Pictures.put(page, PhotoReader.read(logo), HALF + 2, page.width(HALF + 2, LAST), LOGO_PT, true);
        }
    }

    private void people() {
        Quote quote = sheets.quote();
        page.row().text(0, HALF - 1, sheets.reference(), Looking.HEADING);
        page.text(HALF, HALF + 4, words.get("quote.date"), Looking.MUTED);
        date(quote.getDate());
        page.row().text(0, HALF - 1, words.get("state." + quote.getState().getLiteral()), Looking.MUTED);
        page.text(HALF, HALF + 4, words.get("quote.validUntil"), Looking.MUTED);
        date(quote.getValidUntil());
        page.gap(4);
        page.row().text(0, HALF - 1, words.get("quote.for"), Looking.SMALL);
        page.text(HALF, LAST, words.get("quote.at"), Looking.SMALL);
        Customer customer = sheets.document().survey().getCustomer();
        Site site = sheets.document().survey().getSite();
        page.row()
                .text(
                        0,
                        HALF - 1,
                        customer == null ? "" : block(customer.getName(), customer.getAddress()),
                        Looking.BODY);
        page.text(HALF, LAST, site == null ? "" : block(site.getName(), site.getAddress()), Looking.BODY);
        page.gap(5);
    }

    private void date(java.time.@org.jspecify.annotations.Nullable LocalDate date) {
        Look look = Looking.BODY.format(sheets.formats().date()).side(Look.Side.LEFT);
        page.span(HALF + 5, LAST, look).date(HALF + 5, date, look);
    }

    private static String block(
            @org.jspecify.annotations.Nullable String name, @org.jspecify.annotations.Nullable String address) {
        String lines = Titles.lines(address);
        return name == null ? lines : lines.isEmpty() ? name : name + "\n" + lines;
    }

    private void finding() {
        page.row().text(0, LAST, words.get("quote.found"), Looking.HEADING);
        String summary = sheets.quote().getSummary();
        page.row()
                .text(
                        0,
                        LAST,
                        summary == null ? words.get("quote.noSummary") : summary,
                        Looking.BODY.paper(Look.Paper.SOFT));
        page.gap(6);
    }
}
