// SPDX-License-Identifier: EPL-2.0
/** Tests of the rule sets and their tables. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.rules;
