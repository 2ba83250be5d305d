// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.nio.file.Path;
import twinfeed.model.quote.Quote;

/**
 * An issued quote as it stands in its office's folder.
 *
 * @param file its file
 * @param quote the quote, with what was decided since
 * @param digest SHA-256 of the file as it is now
 * @param unchanged whether that is what was kept when it was issued
 * @param verification the same in words
 */
public record IssuedQuote(Path file, Quote quote, String digest, boolean unchanged, String verification) {}
