// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.workings;

import org.jspecify.annotations.Nullable;

/**
 * Where the result of a working stands, as seen from any sheet.
 *
 * @param value the value found
 * @param limit its limit, absent where there is none
 * @param margin how far it lies on the good side, absent where there is no limit
 * @param answer the answer in words
 */
public record ResultCells(
        @Nullable String value, @Nullable String limit, @Nullable String margin, @Nullable String answer) {}
