// SPDX-License-Identifier: EPL-2.0
/** Texts and numbers as a person reads them. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.text;
