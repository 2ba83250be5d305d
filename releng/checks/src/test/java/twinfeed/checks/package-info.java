// SPDX-License-Identifier: EPL-2.0
/** Tests of the whole: layers, versions, notices, the assembled product. */
@NullMarked
package twinfeed.checks;

import org.jspecify.annotations.NullMarked;
