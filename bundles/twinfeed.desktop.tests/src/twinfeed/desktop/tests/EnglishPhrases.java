// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;

/**
 * Finds English in a text that should be German: a message of any bundle of the product, whole or in part, that its German file says in
 * other words; and, of texts that stand in no file of messages, words that only English has. What the person's own files say is left out.
 */
final class EnglishPhrases {
    private static final Pattern ONLY_ENGLISH = Pattern.compile(
            "(?<![-\\w.{\u2039])(the|of|and|with|without|which|from|is|are|has|have|not|by|for|this|that|than|its|when|where|only|write|"
                    + "breaker|fuse|cable|heater|shower|unit|water|pipe|flow|pressure|circuit|changed|unchanged|unknown)(?![-\\w}\u203A])");
    private static final int LEAST_LETTERS = 9;
    private static final int LEAST_OF_DATA = 4;
    private static final int LEAST_OF_MESSAGE = 3;

    /** Names of laws stay as they are. */
    private static final String LAW = "Electricity Safety, Quality and Continuity Regulations 2002";

    private final Set<String> messages = new HashSet<>();
    private final Set<String> fragments =
            new TreeSet<>(Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder()));
    private final Set<String> german = new HashSet<>();
    private final List<String> data;
    private final String allGerman;

    /**
     * With the messages of all bundles of the product.
     *
     * @param files folder of the person's own files
     */
    EnglishPhrases(Path files) throws IOException {
        List<Properties> english = new ArrayList<>();
        BundleContext framework =
                FrameworkUtil.getBundle(twinfeed.desktop.Settings.class).getBundleContext();
        for (Bundle bundle : framework.getBundles()) {
            String name = bundle.getSymbolicName();
            if (name.startsWith("twinfeed.") && !name.endsWith(".tests")) {
                read(bundle, english);
            }
        }
        english.forEach(file -> file.values().forEach(value -> take(String.valueOf(value))));
        allGerman = String.join("\n", german);
        messages.removeAll(german);
        fragments.removeIf(allGerman::contains);
        data = data(files);
    }

    private void read(Bundle bundle, List<Properties> english) throws IOException {
        Enumeration<URL> files = bundle.findEntries("/", "*.properties", true);
        for (URL url : files == null ? List.<URL>of() : Collections.list(files)) {
            if (url.getPath().endsWith("_de.properties")) {
                properties(url).values().forEach(value -> german.add(plain(String.valueOf(value))));
            } else {
                english.add(properties(url));
            }
        }
    }

    private static Properties properties(URL url) throws IOException {
        Properties all = new Properties();
        try (Reader reader = new InputStreamReader(url.openStream(), StandardCharsets.UTF_8)) {
            all.load(reader);
        }
        return all;
    }

    private void take(String value) {
        messages.add(plain(value));
        for (String part : value.split("\\{[^}]*}|\\R")) {
            String fragment = part.replaceAll("^[^\\p{L}]+|[^\\p{L}]+$", "");
            if (fragment.length() >= LEAST_LETTERS && fragment.contains(" ")) {
                fragments.add(fragment);
            }
        }
    }

    private static String plain(String text) {
        return text.replaceAll("&(.)", "$1").strip();
    }

    /** Every value in the person's files, the longest first. */
    private static List<String> data(Path folder) throws IOException {
        Set<String> values = new HashSet<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(each -> each.toString().matches(".*\\.(job|catalogue|csv|properties|quote)"))
                    .toList()) {
                String text = Files.readString(file);
                Matcher value = Pattern.compile(
                                "\"([^\"]*)\"|>([^<]+)<|(?<=[=,:;#]|^)([^=,:;#\\r\\n]+)", Pattern.MULTILINE)
                        .matcher(text);
                while (value.find()) {
                    for (int i = 1; i <= 3; i++) {
                        if (value.group(i) != null) {
                            String whole = value.group(i)
                                    .replace("&#xA;", "\n")
                                    .replace("&amp;", "&")
                                    .replace("&quot;", "\"");
                            // Long texts are shown in lines of their own, or in one.
                            whole.lines()
                                    .flatMap(line -> Stream.of(line.split("[;,]")))
                                    .map(String::strip)
                                    .forEach(values::add);
                            values.add(whole.strip());
                        }
                    }
                }
            }
        }
        return values.stream()
                .filter(each -> each.length() >= LEAST_OF_DATA)
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
    }

    /** What is English in a text that is read in the German window; empty if nothing is. */
    String in(String text) {
        String said = text.replace(LAW, " ").strip();
        if (said.length() >= LEAST_OF_MESSAGE && messages.contains(said) && !data.contains(said)) {
            return said;
        }
        String own = said;
        for (String each : data) {
            if (own.contains(each)) {
                own = own.replace(each, " ");
            }
        }
        for (String fragment : fragments) {
            if (own.contains(fragment)) {
                return fragment;
            }
        }
        Matcher word = ONLY_ENGLISH.matcher(own);
        return word.find() ? word.group() : "";
    }
}
