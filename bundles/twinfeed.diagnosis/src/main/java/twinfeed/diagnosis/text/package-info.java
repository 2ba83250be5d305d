// SPDX-License-Identifier: EPL-2.0
/** Texts of the fault finding. */
@NullMarked
package twinfeed.diagnosis.text;

import org.jspecify.annotations.NullMarked;
