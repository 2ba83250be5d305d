// SPDX-License-Identifier: EPL-2.0
/** Tests of twinfeed.usecase.form. */
@NullMarked
package twinfeed.usecase.form;

import org.jspecify.annotations.NullMarked;
