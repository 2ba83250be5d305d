// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.texts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import twinfeed.units.text.TextPattern;

/**
 * What a quote says whatever the house is: exclusions, terms, cautions and the wording of assumptions, with placeholders such as
 * {@code {validUntil}}. The texts shipped are one set for each language; a firm's own wording takes the place of any of them
 * ({@link StandingTextFile}). Immutable.
 */
public final class StandingTexts {
    /** What may be named in every text: the firm, the customer, the site, the day of the quote, and until when and how many days it holds. */
    public static final Set<String> EVERYWHERE = Set.of("firm", "customer", "site", "date", "validUntil", "validDays");

    static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z]+)}");

    /** The part of a key after the kind that marks a text of the firm's own. */
    static final String OWN = ".own.";

    private final Map<String, String> texts;
    private final Map<String, String> values;

    StandingTexts(Map<String, String> texts, Map<String, String> values) {
        this.texts = Map.copyOf(texts);
        this.values = Map.copyOf(values);
    }

    /** The texts shipped, in a language; in English where there are none. */
    public static StandingTexts of(Locale locale) {
        return new StandingTexts(ShippedTexts.of(locale), Map.of());
    }

    /** The texts shipped in a language by key, in the order of their keys, their placeholders in them. */
    public static Map<String, String> shipped(Locale locale) {
        return java.util.Collections.unmodifiableMap(ShippedTexts.of(locale));
    }

    /** The same with a value for a placeholder. */
    public StandingTexts with(String placeholder, String value) {
        Map<String, String> more = new TreeMap<>(values);
        more.put(placeholder, value);
        return new StandingTexts(texts, more);
    }

    /** The same with a firm's wording in the place of what is shipped. */
    StandingTexts worded(Map<String, String> own) {
        Map<String, String> all = new TreeMap<>(texts);
        all.putAll(own);
        return new StandingTexts(all, values);
    }

    /**
     * A text with its placeholders filled.
     *
     * @param key its key
     * @param more values of its own placeholders, beside those of {@link #EVERYWHERE}
     * @return empty if the firm leaves it out
     * @throws IllegalArgumentException if there is no such text
     */
    public Optional<String> get(String key, Map<String, String> more) {
        String text = texts.get(key);
        if (text == null) {
            throw new IllegalArgumentException("no standing text " + key);
        }
        return text.isBlank() ? Optional.empty() : Optional.of(fill(text, more));
    }

    /** The texts that a firm adds to those shipped, in the order of their keys: {@code term.own.2} before {@code term.own.10}. */
    public List<String> own(Kind kind) {
        Set<String> keys = new TreeSet<>(
                java.util.Comparator.comparingInt(String::length).thenComparing(java.util.Comparator.naturalOrder()));
        texts.keySet().stream().filter(key -> key.startsWith(kind.key() + OWN)).forEach(keys::add);
        List<String> own = new ArrayList<>();
        keys.forEach(key -> get(key, Map.of()).ifPresent(own::add));
        return own;
    }

    private String fill(String text, Map<String, String> more) {
        Map<String, String> all = new TreeMap<>();
        EVERYWHERE.forEach(name -> all.put(name, ""));
        all.putAll(values);
        all.putAll(more);
        return TextPattern.fill(text, all, Locale.ROOT);
    }

    /** What a standing text is. */
    public enum Kind {
        /** What the price does not include. */
        EXCLUSION("exclusion", true),
        /** A term. */
        TERM("term", true),
        /** A caution. */
        CAUTION("caution", false),
        /** What was taken for granted. */
        ASSUMPTION("assumption", false);

        private final String key;
        private final boolean dispensable;

        Kind(String key, boolean dispensable) {
            this.key = key;
            this.dispensable = dispensable;
        }

        /** Beginning of the keys of its texts. */
        public String key() {
            return key;
        }

        /** Whether a firm may leave a text of it out; what keeps people safe and honest stays. */
        public boolean dispensable() {
            return dispensable;
        }

        /** The kind of a key. */
        static Optional<Kind> of(String key) {
            return java.util.Arrays.stream(values())
                    .filter(kind -> key.startsWith(kind.key + "."))
                    .findFirst();
        }
    }
}
