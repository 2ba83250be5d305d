// SPDX-License-Identifier: EPL-2.0
/** The flow calculator: how much water at the target temperature the delivered power gives. */
@NullMarked
package twinfeed.calculator.flow;

import org.jspecify.annotations.NullMarked;
