// SPDX-License-Identifier: EPL-2.0
/** Tests of twinfeed.model.text. */
@NullMarked
package twinfeed.model.text;

import org.jspecify.annotations.NullMarked;
