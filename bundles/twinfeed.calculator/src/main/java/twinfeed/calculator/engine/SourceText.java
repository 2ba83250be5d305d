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
    private static final Map<String, Map<Pattern, String>> FILES = new ConcurrentHashMap<>();

    private final Map<Pattern, String> words;
    private final Map<String, String> known = new ConcurrentHashMap<>();

    /** Sources in one language. */
    public SourceText(Locale locale) {
        words = new LinkedHashMap<>(lines(""));
        String language = locale.getLanguage();
        if (!language.isEmpty() && !language.equals(Locale.ENGLISH.getLanguage())) {
            words.putAll(lines("_" + language));
        }
    }

    /** The source for readers. */
    public String of(String source) {
        return known.computeIfAbsent(source, this::written);
    }

    private String written(String source) {
        String text = source;
        for (Map.Entry<Pattern, String> entry : words.entrySet()) {
            text = entry.getKey().matcher(text).replaceAll(entry.getValue());
        }
        return text;
    }

    private static Map<Pattern, String> lines(String ending) {
        return FILES.computeIfAbsent(ending, SourceText::read);
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
