// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.text;

import twinfeed.units.text.Texts;

/** The messages of this bundle, in the languages it knows. */
public final class WorkbookTexts {
    /** Titles, heads, sentences and errors of the sheets. */
    public static final Texts SHEETS = new Texts(WorkbookTexts.class, "Workbook");

    /** What the readings of a survey and their values are called. */
    public static final Texts READINGS = new Texts(WorkbookTexts.class, "Readings");

    private WorkbookTexts() {}
}
