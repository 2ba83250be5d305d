// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.sheet;

import twinfeed.workbook.writer.CellStyle;

/** The cell styles that several sheets share. */
public final class SheetStyles {
    public static final CellStyle BODY = CellStyle.BODY;
    public static final CellStyle BOLD = BODY.lettering(CellStyle.Lettering.BOLD);
    public static final CellStyle MUTED = BODY.lettering(CellStyle.Lettering.MUTED);
    public static final CellStyle SMALL = BODY.lettering(CellStyle.Lettering.SMALL);
    public static final CellStyle TITLE =
            BODY.lettering(CellStyle.Lettering.TITLE).single();
    public static final CellStyle HEADING = BODY.lettering(CellStyle.Lettering.HEADING);
    public static final CellStyle HEAD =
            BODY.lettering(CellStyle.Lettering.HEAD).fill(CellStyle.Fill.HEAD);
    public static final CellStyle BAND = HEADING.fill(CellStyle.Fill.SOFT).single();
    public static final CellStyle LINE = BODY.border(CellStyle.Border.BELOW);
    public static final CellStyle LINE_MUTED = MUTED.border(CellStyle.Border.BELOW);
    public static final CellStyle SUM = BOLD.border(CellStyle.Border.ABOVE);

    private SheetStyles() {}
}
