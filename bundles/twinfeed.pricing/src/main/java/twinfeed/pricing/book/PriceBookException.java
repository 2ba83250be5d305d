// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.util.Locale;

/** A price book that was refused; its message has one line for each refused place. */
public final class PriceBookException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient ImportReport report;

    PriceBookException(ImportReport report) {
        super(report.refusals(Locale.getDefault(Locale.Category.DISPLAY)));
        this.report = report;
    }

    /** The whole report. */
    public ImportReport report() {
        return report;
    }
}
