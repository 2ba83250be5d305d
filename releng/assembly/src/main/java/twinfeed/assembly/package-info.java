// SPDX-License-Identifier: EPL-2.0
/** Finishes the product folders that the build materialised; a build tool, not in the product. */
@NullMarked
package twinfeed.assembly;

import org.jspecify.annotations.NullMarked;
