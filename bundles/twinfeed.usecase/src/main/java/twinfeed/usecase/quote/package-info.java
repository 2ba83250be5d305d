// SPDX-License-Identifier: EPL-2.0
/** Quotes: priced from an assessed job, written, issued into an office's folder, and what happens to them there. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.quote;
