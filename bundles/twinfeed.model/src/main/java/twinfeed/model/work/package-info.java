// SPDX-License-Identifier: EPL-2.0
/** What becomes of a house by the work that is proposed for it. */
@org.jspecify.annotations.NullMarked
package twinfeed.model.work;
