// SPDX-License-Identifier: EPL-2.0
/** The kinds of files that a person writes: what each may hold, and a first one of each kind. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.guide;
