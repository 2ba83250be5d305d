// SPDX-License-Identifier: EPL-2.0
/** The words of the safe isolation, which every sheet, page and screen takes from here. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.safety;
