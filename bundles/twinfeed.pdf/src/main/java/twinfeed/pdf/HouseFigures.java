// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.util.List;
import twinfeed.document.QuoteDocument;
import twinfeed.document.drawing.QuoteDrawing;
import twinfeed.document.drawing.layout.HouseLayout;
import twinfeed.document.drawing.layout.HousePicture;
import twinfeed.document.shape.Anchor;
import twinfeed.document.shape.LetterWidths;
import twinfeed.document.shape.Shape;
import twinfeed.document.shape.Shape.Label;
import twinfeed.document.shape.Svg;
import twinfeed.document.shape.TextSize;
import twinfeed.document.shape.TextWidth;
import twinfeed.document.shape.Tone;

/** The drawings of the house behind the small print: vectors with the typefaces of the page, and their content in words for screen readers. */
final class HouseFigures {
    /** Width of a drawing in its own unit, in which letters are {@link Svg#LETTERS} high: about 8 points on paper. */
    private static final double WIDTH = 900;

    /** How much wider the typeface of signs is than the one whose widths are known. */
    private static final double WIDER = 1.22;

    private final List<Figure> figures;

    private record Figure(String title, String svg, String said) {}

    private HouseFigures(List<Figure> figures) {
        this.figures = figures;
    }

    /** The drawings of a quote. */
    static HouseFigures of(QuoteDocument document, FontSelector typefaces) {
        TextWidth widths = (text, size, bold) -> {
            FontSelector.Run set = typefaces.whole(text);
            return LetterWidths.of(set.text(), Svg.LETTERS * size.share(), bold)
                    * (set.family().equals(FontSelector.TEXT) ? 1.02 : WIDER);
        };
        HouseLayout layout = new HouseLayout(WIDTH, Svg.LETTERS, widths, document.locale());
        return new HouseFigures(QuoteDrawing.of(document).stream()
                .map(drawing -> figure(drawing, layout.of(drawing.drawing()), typefaces))
                .toList());
    }

    /** A very small drawing. */
    static HouseFigures sample() {
        Label label = new Label(0, 10, "A", Anchor.START, TextSize.NORMAL, Tone.INK, false);
        String svg = new Svg(20, 20, "A", text -> FontSelector.TEXT)
                .draw(List.of(label), 0, 0)
                .toString();
        return new HouseFigures(List.of(new Figure("A", svg, "A")));
    }

    private static Figure figure(QuoteDrawing drawing, HousePicture picture, FontSelector typefaces) {
        List<Shape> shapes = picture.shapes().stream()
                .map(shape -> shape instanceof Label label
                        ? label.with(typefaces.whole(label.text()).text())
                        : shape)
                .toList();
        String svg = new Svg(WIDTH, picture.height(), drawing.title(), text -> typefaces
                        .whole(text)
                        .family())
                .draw(shapes, 0, 0)
                .toString();
        return new Figure(drawing.title(), svg, drawing.drawing().spoken());
    }

    /** Whether they take a page of their own: two do not fit below a text. */
    boolean ownPage() {
        return figures.size() > 1;
    }

    /** Writes them, each with its title on one page. */
    void write(PageBody sheet) {
        FoWriter fo = sheet.fo();
        for (Figure figure : figures) {
            boolean turns = ownPage() && figure == figures.get(0);
            fo.in(
                    "block",
                    () -> {
                        sheet.heading(figure.title());
                        fo.in(
                                "block",
                                () -> fo.in(
                                        "instream-foreign-object",
                                        () -> fo.drawing(figure.svg()),
                                        "width",
                                        "100%",
                                        "content-width",
                                        "scale-to-fit",
                                        "content-height",
                                        "scale-to-fit",
                                        "fox:alt-text",
                                        figure.title() + ": " + figure.said()));
                    },
                    "keep-together.within-page",
                    "always",
                    "break-before",
                    turns ? "page" : "auto");
        }
    }
}
