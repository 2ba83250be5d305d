// SPDX-License-Identifier: EPL-2.0
/** What a third party would write, for the jars that tests make. */
@NullMarked
package twinfeed.usecase.foreign;

import org.jspecify.annotations.NullMarked;
