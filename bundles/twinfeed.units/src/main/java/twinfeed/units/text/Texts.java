// SPDX-License-Identifier: EPL-2.0
package twinfeed.units.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Messages of one bundle in several languages: UTF-8 property files {@code Base.properties}, {@code Base_de.properties} beside
 * a class. Read through the class itself, so that OSGi finds them whoever asks. Placeholders are {@code {name}}; a number is
 * written {@code {name:decimals}} in the locale.
 */
public final class Texts {
    private final Class<?> anchor;
    private final String base;
    private final List<Texts> others;
    private final Map<String, Map<String, String>> byLanguage = new ConcurrentHashMap<>();
    private volatile @Nullable SortedSet<String> keys;

    /**
     * Messages beside a class.
     *
     * @param anchor class whose package and loader hold the files
     * @param base file name without language and ending
     */
    public Texts(Class<?> anchor, String base) {
        this(anchor, base, List.of());
    }

    private Texts(Class<?> anchor, String base, List<Texts> others) {
        this.anchor = anchor;
        this.base = base;
        this.others = List.copyOf(others);
    }

    /** The same messages, with those of another bundle for what is not among them. */
    public Texts including(Texts other) {
        List<Texts> all = new ArrayList<>(others);
        all.add(other);
        return new Texts(anchor, base, all);
    }

    /** How a constant is named in keys of messages: {@code NOT_APPLICABLE} is {@code notApplicable}. */
    public static String key(Enum<?> constant) {
        StringBuilder key = new StringBuilder();
        for (String word : constant.name().toLowerCase(Locale.ROOT).split("_")) {
            key.append(key.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return key.toString();
    }

    /** A message, or the key itself in brackets if there is none: a missing text must be seen, but never stop a job. */
    public String get(Locale locale, String key) {
        String text = find(locale, key);
        return text == null ? "[" + key + "]" : text;
    }

    /** A message, or null if there is none. */
    public @Nullable String find(Locale locale, String key) {
        String text = file(locale.getLanguage()).get(key);
        if (text == null) {
            text = file("").get(key);
        }
        return text == null ? findElsewhere(locale, key) : text;
    }

    private @Nullable String findElsewhere(Locale locale, String key) {
        for (Texts other : others) {
            String text = other.find(locale, key);
            if (text != null) {
                return text;
            }
        }
        return null;
    }

    /** Whether there is such a message. */
    public boolean has(String key) {
        return file("").containsKey(key) || others.stream().anyMatch(other -> other.has(key));
    }

    /** Whether there is such a message and these arguments fill all its placeholders. */
    public boolean filledBy(String key, Map<String, ?> arguments) {
        return has(key) && TextPattern.complete(get(Locale.ROOT, key), arguments.keySet());
    }

    /** All keys of the default language, sorted; not to be changed. */
    public SortedSet<String> keys() {
        SortedSet<String> found = keys;
        if (found == null) {
            SortedSet<String> all = new TreeSet<>(file("").keySet());
            others.forEach(other -> all.addAll(other.keys()));
            found = Collections.unmodifiableSortedSet(all);
            keys = found;
        }
        return found;
    }

    /** A message with its placeholders filled; a {@link Phrase} among the arguments, or a list of them, in the same language. */
    public String format(Locale locale, String key, Map<String, ?> arguments) {
        Map<String, Object> said = new LinkedHashMap<>();
        arguments.forEach((name, value) -> said.put(name, said(locale, value)));
        return TextPattern.fill(get(locale, key), said, locale);
    }

    /** A message whose placeholders {@code {0}}, {@code {1}} and so on are filled in order; values are written as they are. */
    public String inOrder(Locale locale, String key, Object... values) {
        if (values.length == 0) {
            return get(locale, key);
        }
        Map<String, Object> named = new LinkedHashMap<>();
        for (Object value : values) {
            named.put(String.valueOf(named.size()), String.valueOf(value));
        }
        return TextPattern.fill(get(locale, key), named, locale);
    }

    /** The same in the language of the program: for refusals, which are thrown where nobody knows who will read them. */
    public String toReader(String key, Object... values) {
        return inOrder(Locale.getDefault(Locale.Category.DISPLAY), key, values);
    }

    private Object said(Locale locale, Object value) {
        if (value instanceof Phrase phrase) {
            return format(locale, phrase.key(), phrase.arguments());
        }
        if (value instanceof List<?> list) {
            return list.stream().map(each -> said(locale, each).toString()).collect(Collectors.joining("; "));
        }
        return value;
    }

    private Map<String, String> file(String language) {
        return byLanguage.computeIfAbsent(language, this::read);
    }

    private Map<String, String> read(String language) {
        String name = language.isEmpty() ? base + ".properties" : base + "_" + language + ".properties";
        Map<String, String> result = new LinkedHashMap<>();
        try (InputStream stream = anchor.getResourceAsStream(name)) {
            if (stream != null) {
                Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
                Properties properties = new Properties();
                properties.load(reader);
                properties.stringPropertyNames().forEach(key -> result.put(key, properties.getProperty(key)));
            }
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException("messages " + name, unreadable);
        }
        return result;
    }
}
