// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import twinfeed.document.DocumentTexts;
import twinfeed.document.Palette;

/** An A4 page with its head and foot, and the styles that documents share. */
final class PageBody {
    private static final String LAST = "all";
    private static final double POINTS_A_PAGE_MM = 25.4 / 72;

    private final FoWriter fo;
    private final Palette palette;
    private final double size;

    /**
     * A document's looks.
     *
     * @param size size of running text, in points
     */
    PageBody(FoWriter fo, Palette palette, double size) {
        this.fo = fo;
        this.palette = palette;
        this.size = size;
    }

    FoWriter fo() {
        return fo;
    }

    /** A size of letters as a share of running text. */
    String letters(double share) {
        return number(size * share) + "pt";
    }

    /** A distance as a share of the running text's size. */
    String space(double share) {
        return number(size * share * POINTS_A_PAGE_MM) + "mm";
    }

    /** A figure as the layout engine reads it. */
    static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    static String colour(int rgb) {
        return String.format(Locale.ROOT, "#%06X", rgb);
    }

    String accent() {
        return colour(palette.accent());
    }

    String soft() {
        return colour(palette.soft());
    }

    static String rule() {
        return "0.5pt solid " + colour(Palette.RULE);
    }

    static String muted() {
        return colour(Palette.MUTED);
    }

    /**
     * Writes the whole document.
     *
     * @param foot what stands at the foot of every page and at the head of those that follow the first
     */
    void write(String foot, DocumentTexts words, Locale locale, FoWriter.Content body) {
        fo.root(
                locale,
                () -> {
                    masters();
                    fo.in(
                            "page-sequence",
                            () -> {
                                aside("foot", () -> foot(foot, words));
                                aside("again", () -> fo.block(foot, "color", muted(), "text-align", "end"));
                                fo.in("flow", body, "flow-name", "xsl-region-body");
                            },
                            "master-reference",
                            "pages",
                            "id",
                            LAST);
                },
                "font-family",
                FontSelector.TEXT,
                "font-size",
                letters(1),
                "line-height",
                "1.25",
                "text-align",
                "start",
                "color",
                colour(Palette.INK));
    }

    private void masters() {
        fo.in("layout-master-set", () -> {
            master("first", "0mm", () -> {});
            master("next", "9mm", () -> fo.empty("region-before", "region-name", "again", "extent", "6mm"));
            fo.in(
                    "page-sequence-master",
                    () -> fo.in("repeatable-page-master-alternatives", () -> {
                        alternative("first", "first");
                        alternative("next", "rest");
                    }),
                    "master-name",
                    "pages");
        });
    }

    private void alternative(String master, String position) {
        fo.empty("conditional-page-master-reference", "master-reference", master, "page-position", position);
    }

    private void master(String name, String top, FoWriter.Content before) {
        fo.in(
                "simple-page-master",
                () -> {
                    fo.empty("region-body", "margin-top", top, "margin-bottom", "9mm");
                    before.write();
                    fo.empty("region-after", "region-name", "foot", "extent", "6mm", "display-align", "after");
                },
                "master-name",
                name,
                "page-width",
                "210mm",
                "page-height",
                "297mm",
                "margin",
                "12mm 15mm 9mm 15mm");
    }

    /** What repeats on every page is no part of the text that a screen reader reads. */
    private void aside(String region, FoWriter.Content content) {
        fo.in(
                "static-content",
                () -> fo.in("block", content, "font-size", letters(0.8), "color", muted()),
                "flow-name",
                region,
                "role",
                "artifact");
    }

    private void foot(String foot, DocumentTexts words) {
        String[] page = words.get("foot.page").split("\\{pages?}", -1);
        fo.in(
                "block",
                () -> {
                    fo.text(foot);
                    fo.empty("leader", "leader-pattern", "space", "leader-length.optimum", "100%");
                    fo.text(page[0]);
                    fo.empty("page-number");
                    fo.text(page.length > 1 ? page[1] : "");
                    fo.empty("page-number-citation-last", "ref-id", LAST);
                    fo.text(page.length > 2 ? page[2] : "");
                },
                "text-align-last",
                "justify");
    }

    /** Attributes of a box on a ground; its margin of nothing keeps it as wide as the text around it. */
    String[] ground(String colour, String... more) {
        return joined(
                more, "background-color", colour, "padding", space(0.45), "margin-left", "0mm", "margin-right", "0mm");
    }

    /** A heading of the second level. */
    void heading(String text) {
        fo.block(
                text,
                "role",
                "H2",
                "font-size",
                letters(1.1),
                "font-weight",
                "bold",
                "color",
                accent(),
                "space-before",
                space(0.7),
                "space-after",
                space(0.25),
                "keep-with-next.within-page",
                "always");
    }

    /**
     * A place beside others.
     *
     * @param width its width, as XSL-FO writes it
     * @param content what stands there
     * @param attributes of its cell
     */
    record Place(String width, FoWriter.Content content, List<String> attributes) {
        Place(String width, FoWriter.Content content) {
            this(width, content, List.of());
        }
    }

    /** A box with a label, to be written into by pen. */
    Place field(String width, String label, String height) {
        return new Place(
                width,
                () -> fo.in(
                        "block-container",
                        () -> fo.block(label, "font-size", letters(0.8), "color", muted()),
                        "height",
                        height),
                List.of("border", "0.5pt solid " + muted(), "padding", "0.6mm 1mm"));
    }

    /** Places side by side that are no table to a screen reader. */
    void beside(List<Place> places, String... attributes) {
        fo.in(
                "table",
                () -> {
                    places.forEach(place -> fo.empty("table-column", "column-width", place.width()));
                    fo.in(
                            "table-body",
                            () -> fo.in(
                                    "table-row",
                                    () -> places.forEach(place -> fo.in(
                                            "table-cell",
                                            place.content(),
                                            joined(place.attributes().toArray(new String[0]), "role", "Div"))),
                                    "role",
                                    "Div"),
                            "role",
                            "Div");
                },
                joined(
                        attributes,
                        "table-layout",
                        "fixed",
                        "width",
                        "100%",
                        "border-collapse",
                        "separate",
                        "role",
                        "Div"));
    }

    static String[] joined(String[] some, String... more) {
        String[] all = Arrays.copyOf(some, some.length + more.length);
        System.arraycopy(more, 0, all, some.length, more.length);
        return all;
    }
}
