// SPDX-License-Identifier: EPL-2.0
/** What all subjects share: results that may lack a number, argument checks, and root finding. */
@NullMarked
package twinfeed.engineering.numeric;

import org.jspecify.annotations.NullMarked;
