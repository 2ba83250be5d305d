// SPDX-License-Identifier: EPL-2.0
/** The firm's own files, written by the program: who quotes, and its wording of the standing texts. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.firm;
