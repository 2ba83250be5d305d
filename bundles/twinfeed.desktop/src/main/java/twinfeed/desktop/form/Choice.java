// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import org.jspecify.annotations.Nullable;

/**
 * One answer on offer.
 *
 * @param value the value; null for "not recorded"
 * @param text what a person reads
 */
public record Choice(@Nullable Object value, String text) {}
