// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

/** Whether a file is what was issued. It detects a change; it does not prove who made the file. */
public enum Verification {
    /** The file has the digest that was kept beside it. */
    UNCHANGED,
    /** It has another one. */
    CHANGED,
    /** There is no digest beside it, or none that can be read. */
    UNKNOWN;

    /** In words. */
    public String text(java.util.Locale locale) {
        return LifeException.MESSAGES.inOrder(locale, "verification." + name().toLowerCase(java.util.Locale.ROOT));
    }
}
