// SPDX-License-Identifier: EPL-2.0
/** Tests of twinfeed.usecase.guide. */
@NullMarked
package twinfeed.usecase.guide;

import org.jspecify.annotations.NullMarked;
