// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.picture;

/**
 * A picture ready to be put into a document: upright, small, and in a form that every program shows.
 *
 * @param bytes the picture
 * @param jpeg whether it is a JPEG; otherwise a PNG
 * @param width width in pixels
 * @param height height in pixels
 */
public record Picture(byte[] bytes, boolean jpeg, int width, int height) {}
