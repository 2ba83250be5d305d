// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.util.Base64;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Firm;
import twinfeed.document.Titles;
import twinfeed.document.picture.Picture;

/** The head of the first page: the firm, its logo, its address and how to reach it. */
final class Letterhead {
    private static final double LOGO_MM = 15;
    private static final double LOGO_WIDEST_MM = 70;

    private final PageBody sheet;
    private final FoWriter fo;
    private final Firm firm;
    private final @Nullable Picture logo;

    /** For a firm with its logo, if it has one. */
    Letterhead(PageBody sheet, Firm firm, @Nullable Picture logo) {
        this.sheet = sheet;
        this.fo = sheet.fo();
        this.firm = firm;
        this.logo = logo;
    }

    void write() {
        sheet.beside(List.of(new PageBody.Place("60%", this::names), new PageBody.Place("40%", this::logo)));
        sheet.beside(
                List.of(
                        new PageBody.Place("50%", () -> fo.block(Titles.lines(firm.address()), small("start"))),
                        new PageBody.Place("50%", () -> fo.block(Titles.lines(firm.headContact()), small("end")))),
                "border-bottom",
                "0.8pt solid " + sheet.accent(),
                "space-after",
                sheet.space(0.8));
    }

    private String[] small(String side) {
        return new String[] {
            "font-size",
            sheet.letters(0.85),
            "color",
            PageBody.muted(),
            "text-align",
            side,
            "padding-bottom",
            sheet.space(0.4),
            "line-height",
            "1.2"
        };
    }

    private void names() {
        fo.block(firm.name(), "font-size", sheet.letters(1.9), "font-weight", "bold", "color", sheet.accent());
    }

    private void logo() {
        Picture picture = logo;
        fo.in(
                "block",
                () -> {
                    if (picture != null) {
                        graphic(picture);
                    }
                },
                "text-align",
                "end");
    }

    private void graphic(Picture picture) {
        double scale = Math.min(LOGO_MM / picture.height(), LOGO_WIDEST_MM / picture.width());
        String kind = picture.jpeg() ? "image/jpeg" : "image/png";
        fo.empty(
                "external-graphic",
                "src",
                "url('data:" + kind + ";base64," + Base64.getEncoder().encodeToString(picture.bytes()) + "')",
                "content-height",
                PageBody.number(scale * picture.height()) + "mm",
                "content-width",
                PageBody.number(scale * picture.width()) + "mm",
                "fox:alt-text",
                firm.name().isBlank() ? "Logo" : firm.name());
    }
}
