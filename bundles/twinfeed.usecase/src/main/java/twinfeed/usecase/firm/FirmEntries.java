// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.firm;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a {@link twinfeed.usecase.FirmFile} holds, as it is written there.
 *
 * @param name name of the firm
 * @param address postal address, lines separated by semicolons
 * @param contact telephone, mail and so on, lines separated by semicolons
 * @param taxNumber tax registration as it is to be printed
 * @param accent colour as RRGGBB; empty for the usual one
 * @param logo name of a PNG or JPEG beside the file; empty for none
 */
public record FirmEntries(String name, String address, String contact, String taxNumber, String accent, String logo) {
    /** Nothing entered. */
    public static final FirmEntries NONE = new FirmEntries("", "", "", "", "", "");

    /** Whether a colour can be used: six hexadecimal digits, or none. */
    public static boolean colour(String accent) {
        return accent.isEmpty() || accent.matches("[0-9A-Fa-f]{6}");
    }

    /** With another logo. */
    public FirmEntries withLogo(String file) {
        return new FirmEntries(name, address, contact, taxNumber, accent, file);
    }

    /** What is entered, by the keys of the file. */
    Map<String, String> values() {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("name", name);
        values.put("address", address);
        values.put("contact", contact);
        values.put("tax-number", taxNumber);
        values.put("accent", accent);
        values.put("logo", logo);
        values.values().removeIf(String::isBlank);
        return values;
    }

    static FirmEntries of(Map<String, String> values) {
        return new FirmEntries(
                values.getOrDefault("name", ""),
                values.getOrDefault("address", ""),
                values.getOrDefault("contact", ""),
                values.getOrDefault("tax-number", ""),
                values.getOrDefault("accent", ""),
                values.getOrDefault("logo", ""));
    }
}
