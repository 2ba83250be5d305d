// SPDX-License-Identifier: EPL-2.0
/** Tests of this package. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.quote;
