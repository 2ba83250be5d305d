// SPDX-License-Identifier: EPL-2.0
/** The page after the work: what was measured, beside what it should be, and what is printed of it. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.completion;
