// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * Sources as readers see them: with one status in the same words everywhere (verified in NAME, unverified, common practice, engineering
 * judgement), and with their text in the reader's language where there are words for it.
 */
public final class SourceText {
    /** More sources than any rule set and calculator name; a longer list of dwellings must not fill the memory with those of its surveys. */
    private static final int MOST_KNOWN = 5_000;

    private static final Map<String, SourceText> BY_LANGUAGE = new ConcurrentHashMap<>();

    private final Map<Pattern, String> words;
    private final Map<String, String> known = new ConcurrentHashMap<>();

    /** Sources in one language: the same object each time, for what was put into words once need not be again. */
    public static SourceText in(Locale locale) {
        return BY_LANGUAGE.computeIfAbsent(locale.getLanguage(), SourceText::new);
    }

    /** Those of a language, or English for one without words of its own. */
    SourceText(String language) {
        words = read("");
        if (!language.isEmpty() && !language.equals(Locale.ENGLISH.getLanguage())) {
            words.putAll(read("_" + language));
        }
    }

    /** The source for readers. */
    public String of(String source) {
        return known.size() < MOST_KNOWN ? known.computeIfAbsent(source, this::written) : written(source);
    }

    private String written(String source) {
        String text = source;
        for (Map.Entry<Pattern, String> entry : words.entrySet()) {
            text = entry.getKey().matcher(text).replaceAll(entry.getValue());
        }
        return text;
    }

    private static Map<Pattern, String> read(String ending) {
        Map<Pattern, String> lines = new LinkedHashMap<>();
        try (InputStream stream = SourceText.class.getResourceAsStream("source-words" + ending + ".txt")) {
            if (stream == null) {
                return lines;
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                int tab = line.indexOf('\t');
                if (!line.startsWith("#") && tab > 0) {
                    lines.put(Pattern.compile(line.substring(0, tab)), line.substring(tab + 1));
                }
            }
        } catch (IOException broken) {
            throw new UncheckedIOException("source-words" + ending + ".txt", broken);
        }
        return lines;
    }
}
