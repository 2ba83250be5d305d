// SPDX-License-Identifier: EPL-2.0
/** Tests of messages and numbers. */
@NullMarked
package twinfeed.units.text;

import org.jspecify.annotations.NullMarked;
