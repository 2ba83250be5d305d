// SPDX-License-Identifier: EPL-2.0
/** Invented visits, for the tests of the diagnosis and of the calculator that uses it. */
@NullMarked
package twinfeed.diagnosis;

import org.jspecify.annotations.NullMarked;
