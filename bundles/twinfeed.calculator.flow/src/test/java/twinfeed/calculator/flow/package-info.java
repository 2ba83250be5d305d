// SPDX-License-Identifier: EPL-2.0
/** Tests of the flow calculator. */
@NullMarked
package twinfeed.calculator.flow;

import org.jspecify.annotations.NullMarked;
