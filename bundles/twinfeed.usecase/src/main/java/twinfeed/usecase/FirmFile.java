// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import twinfeed.document.DocumentException;
import twinfeed.document.Firm;
import twinfeed.model.io.InputBytes;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.pricing.texts.StandingTextFile;
import twinfeed.pricing.texts.StandingTexts;
import twinfeed.usecase.refusal.Refusals;

/**
 * Who quotes: a UTF-8 property file with {@code name}, {@code address}, {@code contact} (lines separated by semicolons),
 * {@code tax-number} (the tax registration as it is to be printed), {@code accent} (colour as RRGGBB) and {@code logo} (a PNG or JPEG beside it), all of them optional.
 *
 * Its own wording of a quote's standing texts lies beside it ({@link StandingTextFile}).
 *
 * @param firm the firm
 * @param folder where its wording lies; absent for none
 */
public record FirmFile(Firm firm, @Nullable Path folder) {
    /** Its name beside a price book. */
    public static final String NAME = "firm.properties";

    private static final List<String> KEYS = List.of("name", "address", "contact", "tax-number", "accent", "logo");
    private static final int MOST_MIB = 1;

    /** Largest file that a logo may have, bytes. */
    public static final long LARGEST_LOGO = 4L << 20;

    /** The keys that such a file may have. */
    public static List<String> keys() {
        return KEYS;
    }

    /** A firm without a name, for quotes whose head is filled in by hand. */
    public static FirmFile none() {
        return new FirmFile(Firm.of("", "", ""), null);
    }

    /** The firm described beside a price book, or none. */
    public static FirmFile beside(Path book) {
        Path file = book.toAbsolutePath().resolveSibling(NAME);
        return Files.exists(file) ? load(file) : new FirmFile(none().firm(), file.getParent());
    }

    /**
     * Reads a firm.
     *
     * @throws InputException if the file or its logo cannot be used
     */
    public static FirmFile load(Path file) {
        Properties properties = new Properties();
        byte[] content = InputBytes.read(file, MOST_MIB);
        try (Reader reader =
                new InputStreamReader(new ByteArrayInputStream(content), StandardCharsets.UTF_8.newDecoder())) {
            properties.load(reader);
            known(file, properties);
            Firm firm = new Firm(
                    properties.getProperty("name", ""),
                    properties.getProperty("address", ""),
                    properties.getProperty("contact", "").strip(),
                    properties.getProperty("tax-number", "").strip(),
                    accent(file, properties.getProperty("accent")),
                    logo(file, properties.getProperty("logo")));
            seen(file, properties.getProperty("logo", ""), firm);
            return new FirmFile(firm, file.toAbsolutePath().getParent());
        } catch (IOException | IllegalArgumentException unreadable) {
            throw Refusals.exception(unreadable, file, "firm.unreadable");
        }
    }

    /** A misspelt key would leave the firm without its name in silence. */
    private static void known(Path file, Properties properties) {
        List<InputProblem> problems = new ArrayList<>();
        for (String key : new TreeSet<>(properties.stringPropertyNames())) {
            String plain = key.replace("\ufeff", "");
            if (!KEYS.contains(plain)) {
                problems.add(new InputProblem(
                        file.toString(),
                        0,
                        plain,
                        "",
                        Refusals.wrong("firm.key"),
                        Refusals.oneOf("firm.key", plain, KEYS)));
            } else if (!key.equals(plain)) {
                properties.setProperty(plain, properties.getProperty(key));
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    /** A logo that cannot be shown is refused here, before a number is taken for a quote that then cannot be written. */
    private static void seen(Path file, String logo, Firm firm) {
        try {
            firm.picture();
        } catch (DocumentException unreadable) {
            throw new InputException(
                    new InputProblem(
                            file.toString(),
                            0,
                            "logo",
                            logo,
                            String.valueOf(unreadable.getMessage()),
                            Refusals.right("firm.logo")),
                    unreadable);
        }
    }

    /**
     * The standing texts of its quotes in a language.
     *
     * @throws InputException if its own wording cannot be used
     */
    public StandingTexts texts(Locale locale) {
        StandingTexts texts = folder == null ? StandingTexts.of(locale) : StandingTextFile.in(folder, locale);
        return texts.with("firm", firm.name());
    }

    private static int accent(Path file, @Nullable String text) {
        if (text == null) {
            return Firm.DEFAULT_ACCENT;
        }
        if (!text.matches("[0-9A-Fa-f]{6}")) {
            throw new InputException(Refusals.of(file, "accent", text, "firm.accent"));
        }
        return Integer.parseInt(text, 16);
    }

    private static byte @Nullable [] logo(Path file, @Nullable String name) throws IOException {
        if (name == null || name.isBlank()) {
            return null;
        }
        Path picture = file.toAbsolutePath().resolveSibling(name);
        if (!Files.isRegularFile(picture) || Files.size(picture) > LARGEST_LOGO) {
            throw new InputException(Refusals.of(file, "logo", name, "firm.logo"));
        }
        return Files.readAllBytes(picture);
    }
}
