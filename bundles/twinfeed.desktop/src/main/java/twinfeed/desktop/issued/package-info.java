// SPDX-License-Identifier: EPL-2.0
/** Quotes that were issued: where they stand, whether their files are as they were issued, and how two of them differ. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.issued;
