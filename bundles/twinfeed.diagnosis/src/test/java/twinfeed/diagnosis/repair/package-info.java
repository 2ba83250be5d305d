// SPDX-License-Identifier: EPL-2.0
/** Tests of this package. */
@NullMarked
package twinfeed.diagnosis.repair;

import org.jspecify.annotations.NullMarked;
