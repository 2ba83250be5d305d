// SPDX-License-Identifier: EPL-2.0
/** What an office has on its hands: its jobs and issued quotes, what each lacks and what is to be done next. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.office;
