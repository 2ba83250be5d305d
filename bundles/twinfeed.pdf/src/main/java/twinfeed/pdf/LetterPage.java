// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.document.QuoteLetter;
import twinfeed.document.QuoteLetter.Part;
import twinfeed.document.QuoteLetter.Said;

/** What a customer reads, from the reference to the place for the signature. */
final class LetterPage {
    private static final String HALF = "50%";
    private static final String FIELD_HEIGHT = "10mm";

    private final PageBody sheet;
    private final FoWriter fo;
    private final QuoteLetter letter;

    LetterPage(PageBody sheet, QuoteLetter letter) {
        this.sheet = sheet;
        this.fo = sheet.fo();
        this.letter = letter;
    }

    /** All of it: what has to stand on the first page, and the rest. */
    void write() {
        writeFront();
        if (letter.prices() != null) {
            new PriceLinesTable(sheet, letter.prices()).write();
        }
        letter.smallPrint().forEach(this::part);
    }

    /** The drawings of the house, behind everything else. */
    void write(HouseFigures figures) {
        figures.write(sheet);
    }

    /** What the first page holds: down to the box to sign. */
    void writeFront() {
        sheet.beside(List.of(new PageBody.Place(HALF, this::reference), new PageBody.Place(HALF, this::days)));
        sheet.beside(
                List.of(
                        new PageBody.Place(HALF, () -> said(letter.customer())),
                        new PageBody.Place(HALF, () -> said(letter.site()))),
                "space-before",
                sheet.space(0.5));
        danger(letter.dangers());
        sheet.heading(letter.finding().label());
        fo.block(letter.finding().text(), sheet.ground(sheet.soft()));
        if (letter.toMeasure() != null) {
            part(letter.toMeasure());
        }
        new OptionsGrid(sheet, letter).write();
        letter.instead().forEach(this::list);
        if (letter.acceptance() != null) {
            accept(letter.acceptance());
        }
    }

    private void reference() {
        fo.block(
                letter.reference(),
                "role",
                "H1",
                "font-size",
                sheet.letters(1.35),
                "font-weight",
                "bold",
                "color",
                sheet.accent());
        fo.block(letter.state(), "color", PageBody.muted());
    }

    private void days() {
        letter.days()
                .forEach(day -> fo.in("block", () -> {
                    fo.in("inline", () -> fo.text(day.label() + "  "), "color", PageBody.muted());
                    fo.text(day.text());
                }));
    }

    private void said(Said said) {
        fo.block(said.label(), "font-size", sheet.letters(0.85), "color", PageBody.muted());
        fo.block(said.text());
    }

    /** Cautions are a list of their own that is kept in sight; of the rest each part is a paragraph. */
    private void part(Part part) {
        if (part.whole()) {
            fo.in(
                    "block",
                    () -> {
                        title(part.title(), 1);
                        part.entries().forEach(entry -> fo.block("•  " + entry));
                    },
                    sheet.ground(
                            "#FFF1CF",
                            "space-before",
                            sheet.space(0.6),
                            "font-size",
                            sheet.letters(0.92),
                            "keep-together.within-page",
                            "always"));
        } else {
            fo.in(
                    "block",
                    () -> {
                        title(part.title(), 1);
                        fo.block(String.join("  ·  ", part.entries()));
                    },
                    "space-before",
                    sheet.space(0.4),
                    "font-size",
                    sheet.letters(0.85));
        }
    }

    /** An entry a line. */
    private void list(Part part) {
        sheet.heading(part.title());
        part.entries().forEach(entry -> fo.block("•  " + entry, "space-after", sheet.space(0.2)));
    }

    /** What stands before everything else: why the shower must not be used. */
    private void danger(@Nullable Part dangers) {
        if (dangers == null) {
            return;
        }
        fo.in(
                "block",
                () -> {
                    title(dangers.title(), 1.1);
                    dangers.entries().forEach(entry -> fo.block("•  " + entry));
                },
                sheet.ground(
                        "#FBE4E0",
                        "space-before",
                        sheet.space(0.6),
                        "color",
                        "#8A1F11",
                        "border",
                        "1pt solid #8A1F11",
                        "keep-together.within-page",
                        "always"));
    }

    private void title(String text, double share) {
        fo.block(
                text,
                "role",
                "H2",
                "font-weight",
                "bold",
                "font-size",
                share + "em",
                "keep-with-next.within-page",
                "always");
    }

    private void accept(QuoteLetter.Acceptance acceptance) {
        fo.in(
                "block",
                () -> {
                    sheet.heading(acceptance.title());
                    fo.block(choice(acceptance), "space-after", sheet.space(0.4));
                    List<String> fields = acceptance.fields();
                    sheet.beside(List.of(
                            sheet.field("40%", fields.get(0), FIELD_HEIGHT),
                            sheet.field("36%", fields.get(1), FIELD_HEIGHT),
                            sheet.field("24%", fields.get(2), FIELD_HEIGHT)));
                },
                "id",
                Typesetter.BOX_TO_SIGN,
                "keep-together.within-page",
                "always");
    }

    private static String choice(QuoteLetter.Acceptance acceptance) {
        StringBuilder choice = new StringBuilder(acceptance.choice());
        acceptance.options().forEach(option -> choice.append("   ☐ ").append(option));
        return choice.toString();
    }
}
