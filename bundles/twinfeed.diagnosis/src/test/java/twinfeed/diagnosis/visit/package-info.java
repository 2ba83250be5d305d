// SPDX-License-Identifier: EPL-2.0
/** Tests of this package. */
@NullMarked
package twinfeed.diagnosis.visit;

import org.jspecify.annotations.NullMarked;
