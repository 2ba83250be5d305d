// SPDX-License-Identifier: EPL-2.0
/** Tests of the list of dwellings. */
@NullMarked
package twinfeed.usecase.batch;

import org.jspecify.annotations.NullMarked;
