// SPDX-License-Identifier: EPL-2.0
/**
 * Runs all calculators over one survey: their order, the conditions that they judge, and the verdict that follows from their findings.
 */
@NullMarked
package twinfeed.calculator.engine;

import org.jspecify.annotations.NullMarked;
