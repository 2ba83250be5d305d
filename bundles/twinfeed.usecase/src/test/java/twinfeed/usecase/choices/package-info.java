// SPDX-License-Identifier: EPL-2.0
/** Tests of what an estimator decides by hand. */
@NullMarked
package twinfeed.usecase.choices;

import org.jspecify.annotations.NullMarked;
