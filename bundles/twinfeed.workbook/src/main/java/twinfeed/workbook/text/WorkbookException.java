// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.text;

import java.util.Map;
import twinfeed.document.DocumentException;

/**
 * A spreadsheet that cannot be written or read as asked; the message names the place, what is wrong and what would be right. Its text
 * is {@code trouble.KEY} of the bundle's messages.
 */
public final class WorkbookException extends DocumentException {
    private static final long serialVersionUID = 1L;

    /**
     * Says what is wrong.
     *
     * @param key key of the message, without {@code trouble.}
     * @param values what its placeholders stand for
     */
    public WorkbookException(String key, Map<String, ?> values) {
        super(WorkbookTexts.SHEETS, key, values, null);
    }

    /** Says what is wrong, and what was thrown. */
    public WorkbookException(String key, Map<String, ?> values, Throwable cause) {
        super(WorkbookTexts.SHEETS, key, values, cause);
    }
}
