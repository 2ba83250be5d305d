// SPDX-License-Identifier: EPL-2.0
/** The small grammar in which the steps of a working are written: parsed, printed and evaluated. */
@NullMarked
package twinfeed.calculator.expression;

import org.jspecify.annotations.NullMarked;
