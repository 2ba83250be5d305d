// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.form;

/** Where things stand on a form's sheets, and the signs in its hidden first column by which they are found again. */
final class FormCells {
    /** Begins the sign of the first row of the first sheet; version and language follow. */
    static final String MARK = "twinfeed-survey-form";

    static final String VERSION = "1";

    /** A heading or remark. */
    static final String REMARK = "-";

    /** Begins the sign of a reading's row; unit and path follow. */
    static final String READING = "reading";

    /** Begins the sign of the row with the columns of a table; its path follows. */
    static final String TABLE = "table";

    /** The column of signs. */
    static final int SIGN = 0;

    static final int LABEL = 1;
    static final int VALUE = 2;
    static final int TOLERANCE = 3;
    static final int ABSENT = 4;
    static final int USUAL = 5;

    /** In a table: the row's own number, by which rows of another table refer to it. */
    static final String NUMBER = "no";

    /** In a table: the number of the row of another table that this one belongs to. */
    static final String PARENT = "of";

    private FormCells() {}
}
