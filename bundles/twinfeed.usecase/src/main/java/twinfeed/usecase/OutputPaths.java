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
public record OutputPaths(@Nullable Path workbook, @Nullable Path pdf) {
    /** A spreadsheet alone. */
    public static OutputPaths workbook(Path file) {
        return new OutputPaths(file, null);
    }

    /** A PDF alone. */
    public static OutputPaths pdf(Path file) {
        return new OutputPaths(null, file);
    }
}
