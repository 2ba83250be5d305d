// SPDX-License-Identifier: EPL-2.0
/** Tests of the drawing of the house. */
@NullMarked
package twinfeed.document.drawing;

import org.jspecify.annotations.NullMarked;
