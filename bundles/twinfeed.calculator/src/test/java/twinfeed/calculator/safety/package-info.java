// SPDX-License-Identifier: EPL-2.0
/** Tests of the words of the safe isolation. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.safety;
