// SPDX-License-Identifier: EPL-2.0
/** Repair or replace, by price. */
@NullMarked
package twinfeed.diagnosis.repair;

import org.jspecify.annotations.NullMarked;
