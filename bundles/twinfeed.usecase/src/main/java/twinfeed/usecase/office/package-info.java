// SPDX-License-Identifier: EPL-2.0
/** The jobs and issued quotes of an office: what each lacks and what is to be done next. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.office;
