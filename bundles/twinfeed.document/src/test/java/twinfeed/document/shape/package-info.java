// SPDX-License-Identifier: EPL-2.0
/** Tests of what drawings are made of. */
@NullMarked
package twinfeed.document.shape;

import org.jspecify.annotations.NullMarked;
