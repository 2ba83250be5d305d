// SPDX-License-Identifier: EPL-2.0
/** Tests of this package. */
@NullMarked
package twinfeed.usecase.completion;

import org.jspecify.annotations.NullMarked;
