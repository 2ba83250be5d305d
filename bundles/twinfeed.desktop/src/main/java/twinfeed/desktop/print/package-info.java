// SPDX-License-Identifier: EPL-2.0
/** Handing papers to the printers of the system. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.print;
