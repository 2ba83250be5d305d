// SPDX-License-Identifier: EPL-2.0
/** Tests of single classes. */
@NullMarked
package twinfeed.calculator.pressure.check;

import org.jspecify.annotations.NullMarked;
