// SPDX-License-Identifier: EPL-2.0
/** Message texts of the model, apart from the code that finds something to say. */
@NullMarked
package twinfeed.model.text;

import org.jspecify.annotations.NullMarked;
