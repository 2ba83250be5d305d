// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.io.IOException;

/** A spreadsheet that cannot be written or read as asked; the message names the place, what is wrong and what would be right. */
public final class WorkbookException extends IOException {
    /** Says what is wrong. */
    public WorkbookException(String message) {
        super(message);
    }

    /** Says what is wrong, and what was thrown. */
    public WorkbookException(String message, Throwable cause) {
        super(message, cause);
    }
}
