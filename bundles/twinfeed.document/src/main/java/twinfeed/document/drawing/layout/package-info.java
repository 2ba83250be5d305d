// SPDX-License-Identifier: EPL-2.0
/** Where everything of the drawing of a house stands: a section through the house, and a row for each piece below it. */
@org.jspecify.annotations.NullMarked
package twinfeed.document.drawing.layout;
