// SPDX-License-Identifier: EPL-2.0
/** Tests of twinfeed.model.work. */
@NullMarked
package twinfeed.model.work;

import org.jspecify.annotations.NullMarked;
