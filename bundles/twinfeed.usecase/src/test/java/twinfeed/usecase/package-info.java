// SPDX-License-Identifier: EPL-2.0
/** Tests of the use cases that need no calculator, or only one. */
@NullMarked
package twinfeed.usecase;

import org.jspecify.annotations.NullMarked;
