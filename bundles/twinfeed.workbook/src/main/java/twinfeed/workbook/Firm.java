// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import org.jspecify.annotations.Nullable;

/**
 * Who quotes, as the head of the quote shows it.
 *
 * @param name name of the firm; may be empty
 * @param address postal address; lines separated by semicolons; may be empty
 * @param contact telephone, mail, registration; lines separated by semicolons; may be empty
 * @param accent the firm's colour, 0xRRGGBB
 * @param logo picture for the head, PNG or JPEG; absent for none
 */
public record Firm(String name, String address, String contact, int accent, byte @Nullable [] logo) {
    /** A quiet slate blue, for firms without a colour. */
    public static final int DEFAULT_ACCENT = 0x2F5D7C;

    /** A firm without a logo and colour. */
    public static Firm of(String name, String address, String contact) {
        return new Firm(name, address, contact, DEFAULT_ACCENT, null);
    }
}
