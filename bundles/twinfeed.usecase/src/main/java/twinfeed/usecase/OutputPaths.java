// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.AtomicFile;

/**
 * Where a quote or a job sheet is written to. All of it appears, or nothing.
 *
 * @param workbook the spreadsheet, *.xlsx; absent for none
 * @param pdf the PDF; absent for none
 * @param ubl the quote as UBL Quotation, *.xml; absent for none, and of a job sheet always
 * @param inputs files that were read, which no output may replace
 */
public record OutputPaths(@Nullable Path workbook, @Nullable Path pdf, @Nullable Path ubl, List<Path> inputs) {
    public OutputPaths {
        inputs = List.copyOf(inputs);
    }

    /** These, with no input known. */
    public OutputPaths(@Nullable Path workbook, @Nullable Path pdf) {
        this(workbook, pdf, null, List.of());
    }

    /** A spreadsheet alone. */
    public static OutputPaths workbook(Path file) {
        return new OutputPaths(file, null);
    }

    /** A PDF alone. */
    public static OutputPaths pdf(Path file) {
        return new OutputPaths(null, file);
    }

    /** The same, with the quote as UBL Quotation beside them. */
    public OutputPaths withUbl(@Nullable Path file) {
        return new OutputPaths(workbook, pdf, file, inputs);
    }

    /** All of them. */
    public List<Path> files() {
        return Stream.of(workbook, pdf, ubl)
                .flatMap(file -> file == null ? Stream.empty() : Stream.of(file))
                .toList();
    }

    /** The same, sparing these inputs too. */
    public OutputPaths sparing(List<Path> more) {
        return new OutputPaths(
                workbook,
                pdf,
                ubl,
                Stream.concat(inputs.stream(), more.stream()).toList());
    }

    /** The same, and none of these files may be replaced. */
    public OutputPaths sparing(@Nullable Path... more) {
        return sparing(Arrays.stream(more).filter(Objects::nonNull).toList());
    }

    /**
     * Refuses places that no quote or sheet may take.
     *
     * @throws twinfeed.model.io.InputException if one is an input, no regular file, write-protected, in a folder
     *     that is not there, or ends otherwise than its kind
     */
    public void check() {
        if (workbook != null) {
            OutputCheck.check(workbook, ".xlsx", inputs);
        }
        if (pdf != null) {
            OutputCheck.check(pdf, ".pdf", inputs);
        }
        if (ubl != null) {
            OutputCheck.check(ubl, ".xml", inputs);
        }
        files().forEach(AtomicFile::checkFolder);
    }
}
