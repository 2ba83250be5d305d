// SPDX-License-Identifier: EPL-2.0
/** Tests of twinfeed.usecase.batch. */
@NullMarked
package twinfeed.usecase.batch;

import org.jspecify.annotations.NullMarked;
