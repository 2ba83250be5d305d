// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.shape;

/** What a colour is to say; never said by colour alone. */
public enum Tone {
    /** Plain text. */
    INK(0x1B1F23, 0xF2F4F6),
    /** All is well. */
    GOOD(0x17693A, 0x79D59B),
    /** Something fails. */
    BAD(0xA1261F, 0xFF9C93),
    /** Something is not known, or too close to call. */
    DOUBT(0x7A5200, 0xF0C05A),
    /** Would be better otherwise, but decides nothing. */
    ADVICE(0x3F4A9A, 0xB4BCFF),
    /** Beside the point. */
    QUIET(0x5A6068, 0xB2B9C1),
    /** Water. */
    WATER(0x1F5F8B, 0x7CC0EE),
    /** Electricity. */
    POWER(0x7B3F8C, 0xD7A5E6);

    private final int onLight;
    private final int onDark;

    Tone(int onLight, int onDark) {
        this.onLight = onLight;
        this.onDark = onDark;
    }

    /** The colour, 0xRRGGBB, that can be read on a light or on a dark ground. */
    public int rgb(boolean darkGround) {
        return darkGround ? onDark : onLight;
    }
}
