// SPDX-License-Identifier: EPL-2.0
/** What drawings are made of, whatever they are drawn on. */
@org.jspecify.annotations.NullMarked
package twinfeed.document.shape;
