// SPDX-License-Identifier: EPL-2.0
/** Tests of twinfeed.model.form. */
@NullMarked
package twinfeed.model.form;

import org.jspecify.annotations.NullMarked;
