// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.shape;

/** How wide a text is on what it is drawn on. */
@FunctionalInterface
public interface TextWidth {
    /** The width of a text on one line, in the unit in which the drawing is laid out. */
    double of(String text, TextSize size, boolean bold);
}
