// SPDX-License-Identifier: EPL-2.0
/** Tests of twinfeed.model.io. */
@NullMarked
package twinfeed.model.io;

import org.jspecify.annotations.NullMarked;
