// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

/**
 * A rectangle on a drawing.
 *
 * @param x left edge
 * @param y upper edge
 * @param width its width
 * @param height its height
 */
public record Area(double x, double y, double width, double height) {
    /** Whether a point lies in it. */
    public boolean contains(double atX, double atY) {
        return atX >= x && atX <= x + width && atY >= y && atY <= y + height;
    }

    /** Whether it shares more than an edge with another one. */
    public boolean overlaps(Area other) {
        return x < other.x + other.width && other.x < x + width && y < other.y + other.height && other.y < y + height;
    }
}
