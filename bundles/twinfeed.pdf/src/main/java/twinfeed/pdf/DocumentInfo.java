// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.time.Instant;
import java.util.Locale;

/**
 * What a PDF says about itself.
 *
 * @param title its title
 * @param author who made it; may be empty
 * @param producer the program with its version
 * @param locale its language
 * @param time time of its making; never the clock's
 */
record DocumentInfo(String title, String author, String producer, Locale locale, Instant time) {}
