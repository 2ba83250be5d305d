// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Where a quote or a job sheet is written to. All of it appears, or nothing.
 *
 * @param workbook the spreadsheet, *.xlsx; absent for none
 * @param pdf the PDF; absent for none
 */
public record Outputs(@Nullable Path workbook, @Nullable Path pdf) {
    /** A spreadsheet alone. */
    public static Outputs workbook(Path file) {
        return new Outputs(file, null);
    }

    /** A PDF alone. */
    public static Outputs pdf(Path file) {
        return new Outputs(null, file);
    }
}
