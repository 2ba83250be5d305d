// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import twinfeed.document.Palette;

/** The styles of one book, each made once. */
public final class CellStyles {
    /** Its metrics are the same on every system, under one name or another; the widths of {@link TextWidth} are its widths. */
    private static final String FACE = "Arial";

    private final XSSFWorkbook workbook;
    private final Palette palette;
    private final Map<CellStyle, Integer> styles = new HashMap<>();
    private final Map<CellStyle.Lettering, XSSFFont> fonts = new EnumMap<>(CellStyle.Lettering.class);
    private final Map<Integer, XSSFColor> colours = new HashMap<>();

    CellStyles(XSSFWorkbook workbook, Palette palette) {
        this.workbook = workbook;
        this.palette = palette;
        // Column widths are counted in digits of the book's first font.
        XSSFFont first = workbook.getFontAt(0);
        first.setFontName(FACE);
        first.setFontHeightInPoints((short) CellStyle.Lettering.BODY.points);
        first.setColor(colour(Palette.INK));
        fonts.put(CellStyle.Lettering.BODY, first);
    }

    Palette palette() {
        return palette;
    }

    /** The number of a look's style in the book. */
    int index(CellStyle look) {
        return styles.computeIfAbsent(look, key -> (int) make(key).getIndex());
    }

    private XSSFCellStyle make(CellStyle look) {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setFont(font(look.lettering()));
        boolean top = look.wrap() || !look.format().isEmpty();
        style.setVerticalAlignment(top ? VerticalAlignment.TOP : VerticalAlignment.CENTER);
        style.setWrapText(look.wrap());
        style.setAlignment(
                switch (look.align()) {
                    case LEFT -> HorizontalAlignment.LEFT;
                    case CENTRE -> HorizontalAlignment.CENTER;
                    case RIGHT -> HorizontalAlignment.RIGHT;
                });
        String format = format(look);
        if (!format.isEmpty()) {
            style.setDataFormat(workbook.createDataFormat().getFormat(format));
        }
        if (look.quoted()) {
            style.setQuotePrefixed(true);
        }
        fill(style, look.fill());
        lines(style, look.border());
        return style;
    }

    /**
     * A little air between a figure at the right and a text at the left of the next column: the width of a bracket in the format. An
     * indent would say the same, but is not kept by every program that prints.
     */
    private static String format(CellStyle look) {
        if (look.align() != CellStyle.Alignment.RIGHT) {
            return look.format();
        }
        return (look.format().isEmpty() ? "@" : look.format()) + "_)";
    }

    private void fill(XSSFCellStyle style, CellStyle.Fill paper) {
        if (paper != CellStyle.Fill.PLAIN) {
            style.setFillForegroundColor(colour(background(paper)));
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        }
    }

    private void lines(XSSFCellStyle style, CellStyle.Border edge) {
        if (edge == CellStyle.Border.BELOW || edge == CellStyle.Border.BOX) {
            style.setBorderBottom(BorderStyle.THIN);
            style.setBottomBorderColor(colour(Palette.RULE));
        }
        if (edge == CellStyle.Border.ABOVE || edge == CellStyle.Border.BOX) {
            style.setBorderTop(BorderStyle.THIN);
            style.setTopBorderColor(colour(edge == CellStyle.Border.BOX ? Palette.RULE : palette.accent()));
        }
        if (edge == CellStyle.Border.BOX) {
            style.setBorderLeft(BorderStyle.THIN);
            style.setLeftBorderColor(colour(Palette.RULE));
            style.setBorderRight(BorderStyle.THIN);
            style.setRightBorderColor(colour(Palette.RULE));
        }
    }

    private XSSFFont font(CellStyle.Lettering ink) {
        return fonts.computeIfAbsent(ink, key -> {
            XSSFFont font = workbook.createFont();
            font.setFontName(FACE);
            font.setFontHeightInPoints((short) key.points);
            font.setBold(key.bold);
            font.setColor(colour(foreground(key)));
            return font;
        });
    }

    private int foreground(CellStyle.Lettering ink) {
        return switch (ink) {
            case MUTED -> Palette.MUTED;
            case HEADING, TITLE -> palette.accent();
            case HEAD -> Palette.WHITE;
            case GOOD -> 0x1E5B2B;
            case BAD -> 0x8A1F11;
            case DOUBT -> 0x6B4A00;
            default -> Palette.INK;
        };
    }

    private int background(CellStyle.Fill paper) {
        return switch (paper) {
            case PLAIN -> Palette.WHITE;
            case HEAD -> palette.accent();
            case SOFT -> palette.soft();
            case INPUT -> 0xFFFBE8;
            case GOOD -> 0xE4F2E6;
            case BAD -> 0xFBE4E0;
            case DOUBT -> 0xFFF1CF;
            case GREY -> 0xF0F2F3;
        };
    }

    private XSSFColor colour(int rgb) {
        return colours.computeIfAbsent(
                rgb, key -> new XSSFColor(new byte[] {(byte) (key >> 16), (byte) (key >> 8), (byte) (int) key}, null));
    }
}
