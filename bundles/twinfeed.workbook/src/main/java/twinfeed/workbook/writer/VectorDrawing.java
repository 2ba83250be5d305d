// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.util.Units;
import org.jspecify.annotations.Nullable;
import twinfeed.document.shape.Anchor;
import twinfeed.document.shape.Shape;
import twinfeed.document.shape.Shape.Box;
import twinfeed.document.shape.Shape.Disc;
import twinfeed.document.shape.Shape.Ink;
import twinfeed.document.shape.Shape.Label;
import twinfeed.document.shape.Shape.Line;
import twinfeed.document.shape.Shape.Point;

/**
 * Drawings of a sheet as DrawingML (ECMA-376 part 1, 20.1 and 20.5), which spreadsheet programs draw as sharp as the paper is. Written
 * beside POI, whose shapes say a good deal that is the usual anyway: lines of one colour and thickness are one shape here, and of a text
 * only what it has of its own is said.
 */
public final class VectorDrawing {
    private static final int WHITE = 0xFF;

    /** Boxes of text, which nobody sees, are all as wide: none is too narrow then, and equal figures are packed better. */
    private static final double TEXT_BOX = 200;

    private final double letters;
    private final StringBuilder body = new StringBuilder();
    private int id = 1;

    /**
     * No drawing yet.
     *
     * @param letters size of running text in points, which is the unit of the drawings
     */
    public VectorDrawing(double letters) {
        this.letters = letters;
    }

    /**
     * Adds a drawing whose top left corner is that of a cell. Areas lie lowest, then lines, then plates, then texts; what looks alike stands
     * together, which packs best.
     *
     * @param description what it shows, for screen readers
     */
    public VectorDrawing add(int column, int row, double width, double height, List<Shape> shapes, String description) {
        body.append("<xdr:oneCellAnchor><xdr:from><xdr:col>")
                .append(column)
                .append("</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>")
                .append(row)
                .append("</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext")
                .append(size(width, height))
                .append("/><xdr:grpSp><xdr:nvGrpSpPr><xdr:cNvPr id=\"")
                .append(++id)
                .append("\" name=\"\" descr=\"")
                .append(XmlText.of(description).replace("\"", "&quot;"))
                .append("\"/><xdr:cNvGrpSpPr/></xdr:nvGrpSpPr><xdr:grpSpPr><a:xfrm><a:off x=\"0\" y=\"0\"/><a:ext")
                .append(size(width, height))
                .append("/><a:chOff x=\"0\" y=\"0\"/><a:chExt")
                .append(inner(width, height))
                .append("/></a:xfrm></xdr:grpSpPr>");
        List<Line> lines = new ArrayList<>();
        List<Plate> plates = new ArrayList<>();
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            Shape shape = shapes.get(i);
            if (shape instanceof Line line) {
                lines.add(line);
            } else if (shape instanceof Disc disc && disc.line() == null) {
                lines.add(dot(disc));
            } else if (shape instanceof Box box && i + 1 < shapes.size() && within(box, shapes.get(i + 1))) {
                plates.add(new Plate(box, (Label) shapes.get(++i)));
            } else if (shape instanceof Label label) {
                labels.add(label);
            } else {
                single(shape);
            }
        }
        lines(lines, width, height);
        plates.sort(Comparator.comparing(Plate::style));
        plates.forEach(plate -> box(plate.box(), plate.text()));
        labels.sort(Comparator.comparing(VectorDrawing::style));
        labels.forEach(this::text);
        body.append("</xdr:grpSp><xdr:clientData/></xdr:oneCellAnchor>");
        return this;
    }

    private static String size(double width, double height) {
        return " cx=\"" + emu(width) + "\" cy=\"" + emu(height) + "\"";
    }

    private static long emu(double points) {
        return Math.round(points * 10) * (Units.EMU_PER_POINT / 10);
    }

    /** Within a drawing lengths are in fifths of a point: finer nobody sees, and short figures are packed better. */
    private static long fine(double points) {
        return Math.round(points * 5);
    }

    private static String inner(double width, double height) {
        return " cx=\"" + fine(width) + "\" cy=\"" + fine(height) + "\"";
    }

    /** A disc as a very short line with round ends: so the discs of a drawing are one shape. */
    private static Line dot(Disc disc) {
        Point middle = new Point(disc.x(), disc.y());
        return new Line(List.of(middle, new Point(disc.x() + 0.2, disc.y())), disc.fill(), 2 * disc.radius(), false);
    }

    /** A box with a text in its middle. */
    private record Plate(Box box, Label text) {
        String style() {
            return VectorDrawing.style(text) + box.thickness() + box.radius();
        }
    }

    private static String style(Label label) {
        return label.anchor() + " " + label.size() + " " + label.tone() + " " + label.bold();
    }

    /** Whether a shape is the text in the middle of a box. */
    private boolean within(Box box, Shape next) {
        return next instanceof Label label
                && label.anchor() == Anchor.MIDDLE
                && Math.abs(label.x() - box.x() - box.width() / 2) < 0.01
                && label.y() > box.y()
                && Math.abs(label.y() - box.y() - box.height() / 2)
                        < label.size().share() * letters * 0.5;
    }

    private record Pen(Ink ink, double thickness, boolean dashed) {}

    private void lines(List<Line> all, double width, double height) {
        Map<Pen, List<Line>> byPen = new LinkedHashMap<>();
        for (Line line : all) {
            byPen.computeIfAbsent(new Pen(line.ink(), line.thickness(), line.dashed()), pen -> new ArrayList<>())
                    .add(line);
        }
        byPen.forEach((pen, lines) -> {
            begin(0, 0, width, height);
            body.append("<a:custGeom><a:avLst/><a:pathLst><a:path w=\"")
                    .append(fine(width))
                    .append("\" h=\"")
                    .append(fine(height))
                    .append("\" fill=\"none\">");
            lines.forEach(line -> path(line.points()));
            body.append("</a:path></a:pathLst></a:custGeom><a:noFill/>");
            edge(pen.ink(), pen.thickness(), pen.dashed());
            body.append("</xdr:spPr></xdr:sp>");
        });
    }

    private void path(List<Point> points) {
        for (int i = 0; i < points.size(); i++) {
            String kind = i == 0 ? "moveTo" : "lnTo";
            body.append("<a:")
                    .append(kind)
                    .append("><a:pt x=\"")
                    .append(fine(points.get(i).x()))
                    .append("\" y=\"")
                    .append(fine(points.get(i).y()))
                    .append("\"/></a:")
                    .append(kind)
                    .append('>');
        }
    }

    private void begin(double x, double y, double width, double height) {
        body.append("<xdr:sp><xdr:nvSpPr><xdr:cNvPr id=\"")
                .append(++id)
                .append("\" name=\"\"/><xdr:cNvSpPr/></xdr:nvSpPr><xdr:spPr><a:xfrm><a:off x=\"")
                .append(fine(x))
                .append("\" y=\"")
                .append(fine(y))
                .append("\"/><a:ext")
                .append(inner(width, height))
                .append("/></a:xfrm>");
    }

    private void box(Box box, @Nullable Label text) {
        begin(box.x(), box.y(), box.width(), box.height());
        String form = box.radius() > 0 ? "roundRect" : "rect";
        body.append("<a:prstGeom prst=\"").append(form).append("\"><a:avLst>");
        if (box.radius() > 0) {
            body.append("<a:gd name=\"adj\" fmla=\"val ")
                    .append(Math.round(100 * box.radius() / Math.min(box.width(), box.height())) * 1000)
                    .append("\"/>");
        }
        body.append("</a:avLst></a:prstGeom>");
        fill(box.fill());
        if (box.line() != null) {
            edge(box.line(), box.thickness(), false);
        }
        body.append("</xdr:spPr>");
        if (text != null) {
            written(text);
        }
        body.append("</xdr:sp>");
    }

    private void single(Shape shape) {
        if (shape instanceof Box box) {
            box(box, null);
        } else if (shape instanceof Disc disc) {
            double radius = disc.radius();
            begin(disc.x() - radius, disc.y() - radius, 2 * radius, 2 * radius);
            body.append("<a:prstGeom prst=\"ellipse\"><a:avLst/></a:prstGeom>");
            fill(disc.fill());
            if (disc.line() != null) {
                edge(disc.line(), disc.thickness(), false);
            }
            body.append("</xdr:spPr></xdr:sp>");
        }
    }

    private void text(Label label) {
        double high = letters * label.size().share();
        begin(label.x() - TEXT_BOX * label.anchor().share(), label.y() - 1.05 * high, TEXT_BOX, 1.4 * high);
        body.append("<a:prstGeom prst=\"rect\"><a:avLst/></a:prstGeom></xdr:spPr>");
        written(label);
        body.append("</xdr:sp>");
    }

    private void written(Label label) {
        double high = letters * label.size().share();
        body.append(
                "<xdr:txBody><a:bodyPr wrap=\"none\" lIns=\"0\" tIns=\"0\" rIns=\"0\" bIns=\"0\" anchor=\"ctr\"/><a:p>");
        if (label.anchor() != Anchor.START) {
            body.append("<a:pPr algn=\"")
                    .append(label.anchor() == Anchor.END ? "r" : "ctr")
                    .append("\"/>");
        }
        body.append("<a:r><a:rPr sz=\"")
                .append(Math.round(high * 10) * 10)
                .append(label.bold() ? "\" b=\"1\">" : "\">");
        fill(Ink.of(label.tone()));
        body.append("<a:latin typeface=\"Arial\"/></a:rPr><a:t>")
                .append(XmlText.of(label.text()))
                .append("</a:t></a:r></a:p></xdr:txBody>");
    }

    private void fill(@Nullable Ink ink) {
        body.append(
                ink == null ? "<a:noFill/>" : "<a:solidFill><a:srgbClr val=\"" + colour(ink) + "\"/></a:solidFill>");
    }

    private void edge(Ink ink, double thickness, boolean dashed) {
        body.append("<a:ln w=\"").append(emu(Math.max(0.5, thickness))).append("\" cap=\"rnd\">");
        fill(ink);
        body.append(dashed ? "<a:prstDash val=\"dash\"/></a:ln>" : "</a:ln>");
    }

    private static String colour(Ink ink) {
        int rgb = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int full = ink.tone().rgb(false) >> shift & WHITE;
            rgb |= (int) Math.round(WHITE + (full - WHITE) * ink.strength()) << shift;
        }
        return HexFormat.of().withUpperCase().toHexDigits(rgb, 6);
    }

    /** Puts the drawings on a sheet, which must have no other one. */
    public void put(SheetWriter page) {
        String part = page.sheet()
                .createDrawingPatriarch()
                .getPackagePart()
                .getPartName()
                .getName();
        String xml = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n"
                + "<xdr:wsDr xmlns:xdr=\"http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing\""
                + " xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\">" + body + "</xdr:wsDr>";
        page.book().replace(part.substring(1), xml.getBytes(StandardCharsets.UTF_8));
    }
}
