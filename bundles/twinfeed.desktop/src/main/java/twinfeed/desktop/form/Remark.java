// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

/**
 * What a page says beside a reading.
 *
 * @param level how bad it is
 * @param text the remark in words
 */
public record Remark(Level level, String text) {
    /** How bad it is. */
    public enum Level {
        /** It cannot be so. */
        WRONG,
        /** It can be so, but is unusual. */
        ODD,
        /** A check waits for it. */
        WANTED
    }
}
