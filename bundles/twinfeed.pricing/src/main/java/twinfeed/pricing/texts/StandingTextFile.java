// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.texts;

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
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import twinfeed.model.io.InputBytes;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.units.text.Texts;

/**
 * A firm's own wording of the standing texts: a UTF-8 property file {@code standing-texts.properties}, one for a language
 * {@code standing-texts_de.properties}. A line {@code term.cancel = ...} words a text anew; an empty one leaves an exclusion or a term
 * out; {@code term.own.1 = ...} adds one. A language without a file of its own has the firm's other wording, for nothing that the firm
 * says may get lost.
 */
public final class StandingTextFile {
    /** Name of the file beside a price book. */
    public static final String NAME = "standing-texts.properties";

    private static final int MOST_MIB = 1;
    private static final Texts MESSAGES = new Texts(StandingTextFile.class, "messages");

    private final String name;
    private final Map<String, String> shipped;
    private final List<InputProblem> problems = new ArrayList<>();

    private StandingTextFile(String name, Locale locale) {
        this.name = name;
        this.shipped = ShippedTexts.of(locale);
    }

    /** What the file of a language is called that goes before the one for all languages. */
    public static String name(Locale locale) {
        return NAME.replace(".", "_" + locale.getLanguage() + ".");
    }

    /**
     * The texts of a firm whose file lies in a folder, or those shipped if there is none.
     *
     * @throws InputException if a file is there that cannot be used; every problem is in its message
     */
    public static StandingTexts in(Path folder, Locale locale) {
        Path ofLanguage = folder.resolve(name(locale));
        StandingTexts texts = StandingTexts.of(locale);
        for (Path file : List.of(folder.resolve(NAME), ofLanguage)) {
            if (Files.exists(file)) {
                texts = texts.worded(read(file, locale));
            }
        }
        return texts;
    }

    /**
     * The texts of a firm.
     *
     * @throws InputException if the file cannot be used; every problem is in its message
     */
    public static StandingTexts load(Path file, Locale locale) {
        return StandingTexts.of(locale).worded(read(file, locale));
    }

    /**
     * Looks at a wording before it is written.
     *
     * @param name of the file, for the messages
     * @throws InputException if it cannot be used; every problem is in its message
     */
    public static void check(String name, Map<String, String> own, Locale locale) {
        new StandingTextFile(name, locale).checked(own);
    }

    private static Map<String, String> read(Path file, Locale locale) {
        byte[] content = InputBytes.read(file, MOST_MIB);
        try (Reader reader =
                new InputStreamReader(new ByteArrayInputStream(content), StandardCharsets.UTF_8.newDecoder())) {
            return new StandingTextFile(file.toString(), locale).checked(ShippedTexts.read(reader));
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new InputException(
                    InputProblem.ofFile(
                            file.toString(),
                            MESSAGES.toReader("unreadable.wrong"),
                            MESSAGES.toReader("unreadable.right")),
                    unreadable);
        }
    }

    private Map<String, String> checked(Map<String, String> own) {
        own.forEach(this::check);
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return new TreeMap<>(own);
    }

    private void check(String key, String text) {
        boolean added = StandingTexts.Kind.of(key).isPresent() && key.contains(StandingTexts.OWN);
        if (!added && !shipped.containsKey(key)) {
            refuse(key, text, "unknownKey", String.join(", ", new TreeSet<>(shipped.keySet())));
            return;
        }
        if (text.isBlank()
                && !StandingTexts.Kind.of(key)
                        .map(StandingTexts.Kind::dispensable)
                        .orElse(false)) {
            refuse(key, text, "leftOut");
        }
        Set<String> known = new TreeSet<>(StandingTexts.EVERYWHERE);
        known.addAll(names(shipped.getOrDefault(key, "")));
        for (String name : names(text)) {
            if (!known.contains(name)) {
                refuse(key, "{" + name + "}", "placeholder", braced(known));
            }
        }
        if (StandingTexts.PLACEHOLDER.matcher(text).replaceAll("").matches("(?s).*[{}].*")) {
            refuse(key, text, "brace", braced(known));
        }
    }

    private static Set<String> names(String text) {
        return StandingTexts.PLACEHOLDER
                .matcher(text)
                .results()
                .map(one -> one.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String braced(Set<String> names) {
        return names.stream().map(one -> "{" + one + "}").collect(Collectors.joining(", "));
    }

    private void refuse(String key, String reading, String trouble, String... arguments) {
        problems.add(new InputProblem(
                name,
                0,
                key,
                reading,
                MESSAGES.toReader(trouble + ".wrong", arguments),
                MESSAGES.toReader(trouble + ".right", arguments)));
    }
}
