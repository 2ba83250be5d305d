// SPDX-License-Identifier: EPL-2.0
/** Tests of the layout of the drawing. */
@NullMarked
package twinfeed.document.drawing.layout;

import org.jspecify.annotations.NullMarked;
