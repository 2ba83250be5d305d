// SPDX-License-Identifier: EPL-2.0
/** Measurements; not in the product. */
@NullMarked
package twinfeed.benchmarks;

import org.jspecify.annotations.NullMarked;
