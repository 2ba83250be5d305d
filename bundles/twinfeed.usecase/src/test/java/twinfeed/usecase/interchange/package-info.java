// SPDX-License-Identifier: EPL-2.0
/** Tests of twinfeed.usecase.interchange. */
@NullMarked
package twinfeed.usecase.interchange;

import org.jspecify.annotations.NullMarked;
