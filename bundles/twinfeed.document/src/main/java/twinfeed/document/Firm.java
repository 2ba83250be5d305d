// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.io.IOException;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.document.picture.PhotoReader;
import twinfeed.document.picture.Picture;

/**
 * Who quotes, as the head of the quote shows it.
 *
 * @param name name of the firm; may be empty
 * @param address postal address; lines separated by semicolons; may be empty
 * @param contact telephone, mail; lines separated by semicolons; may be empty
 * @param taxNumber tax registration as it is to be printed; may be empty
 * @param accent the firm's colour, 0xRRGGBB
 * @param logo picture for the head, PNG or JPEG; absent for none
 */
public record Firm(String name, String address, String contact, String taxNumber, int accent, byte @Nullable [] logo) {
    /** A quiet slate blue, for firms without a colour. */
    public static final int DEFAULT_ACCENT = 0x2F5D7C;

    /** A firm without a tax registration. */
    public Firm(String name, String address, String contact, int accent, byte @Nullable [] logo) {
        this(name, address, contact, "", accent, logo);
    }

    /** What the head of a paper says beside the address: how the firm is reached, and its tax registration below. */
    public String headContact() {
        return contact.isEmpty() || taxNumber.isEmpty() ? contact + taxNumber : contact + "; " + taxNumber;
    }

    /** A firm without a logo and colour. */
    public static Firm of(String name, String address, String contact) {
        return new Firm(name, address, contact, DEFAULT_ACCENT, null);
    }

    /**
     * The logo, small and upright.
     *
     * @return the picture, or null if the firm has none
     * @throws DocumentException if it cannot be read
     */
    public @Nullable Picture picture() throws DocumentException {
        if (logo == null) {
            return null;
        }
        try {
            return PhotoReader.read(logo);
        } catch (IOException unreadable) {
            throw new DocumentException("logo", Map.of("reason", String.valueOf(unreadable.getMessage())), unreadable);
        }
    }
}
