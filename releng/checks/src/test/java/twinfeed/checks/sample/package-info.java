// SPDX-License-Identifier: EPL-2.0
/** What a third party would write: packed into a bundle by {@link twinfeed.checks.ProductExtensionTest}. */
@NullMarked
package twinfeed.checks.sample;

import org.jspecify.annotations.NullMarked;
