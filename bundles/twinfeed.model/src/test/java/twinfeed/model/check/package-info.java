// SPDX-License-Identifier: EPL-2.0
/** Tests of twinfeed.model.check. */
@NullMarked
package twinfeed.model.check;

import org.jspecify.annotations.NullMarked;
