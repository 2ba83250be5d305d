// SPDX-License-Identifier: EPL-2.0
/** Tests of this package. */
@NullMarked
package twinfeed.diagnosis.isolation;

import org.jspecify.annotations.NullMarked;
