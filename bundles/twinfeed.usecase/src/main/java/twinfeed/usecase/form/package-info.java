// SPDX-License-Identifier: EPL-2.0
/** Surveys on forms: written for a visit, and read back into jobs. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.form;
