// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;

/** What is remembered between two starts: recent jobs, the price book, the layout. Written at once, so that a crash loses nothing. */
public final class Settings {
    /** How many recent jobs are remembered. */
    public static final int MOST_RECENT = 9;

    private static final String RECENT = "recent";
    private static final String PRICES = "prices";
    private static final String CATALOGUE = "catalogue";
    private static final String OFFICE = "office";
    private static final String LANGUAGE = "language";
    private static final String LAYOUT = "layout";
    private static final String SEPARATOR = "\n";

    private final Preferences node;

    /** Kept in a node of the preferences. */
    public Settings(Preferences node) {
        this.node = node;
    }

    /** Recent jobs, the newest first. */
    public List<Path> recent() {
        List<Path> files = new ArrayList<>();
        for (String each : node.get(RECENT, "").split(SEPARATOR)) {
            path(each).ifPresent(files::add);
        }
        return List.copyOf(files);
    }

    /** A job was opened or saved. */
    public void remember(Path job) {
        List<Path> files = new ArrayList<>(recent());
        files.remove(job.toAbsolutePath());
        files.add(0, job.toAbsolutePath());
        keep(files);
    }

    /** A job is not there any more. */
    public void forget(Path job) {
        List<Path> files = new ArrayList<>(recent());
        files.remove(job.toAbsolutePath());
        keep(files);
    }

    private void keep(List<Path> files) {
        List<String> texts =
                files.stream().limit(MOST_RECENT).map(Path::toString).toList();
        put(RECENT, String.join(SEPARATOR, texts));
    }

    /** The price book that was chosen last; empty if none ever was. */
    public Optional<Path> prices() {
        return path(node.get(PRICES, ""));
    }

    /** Another price book was chosen. */
    public void prices(Path book) {
        put(PRICES, book.toAbsolutePath().toString());
    }

    /** The folder in which quotes are issued; empty if none was chosen yet. */
    public Optional<Path> office() {
        return path(node.get(OFFICE, ""));
    }

    /** Quotes are issued in another folder from now on. */
    public void office(Path folder) {
        put(OFFICE, folder.toAbsolutePath().toString());
    }

    /** The catalogue that was chosen last; empty if none ever was. */
    public Optional<Path> catalogue() {
        return path(node.get(CATALOGUE, ""));
    }

    /** Another catalogue was chosen. */
    public void catalogue(Path file) {
        put(CATALOGUE, file.toAbsolutePath().toString());
    }

    /** The language that was chosen; that of the system if none ever was. */
    public String language() {
        return node.get(LANGUAGE, WindowLanguage.SYSTEM);
    }

    /** Another language was chosen, by its code; anything that is none means the system's. */
    public void language(String code) {
        put(LANGUAGE, code);
    }

    /** Widths of the panes in parts of a thousand; the default where none, or another number of them, is remembered. */
    public int[] layout(String of, int... standard) {
        String[] texts = node.get(LAYOUT + "." + of, "").split(" ");
        int[] weights = new int[standard.length];
        if (texts.length != weights.length) {
            return standard;
        }
        for (int i = 0; i < weights.length; i++) {
            if (!texts[i].matches("[1-9]\\d{0,8}")) {
                return standard;
            }
            weights[i] = Integer.parseInt(texts[i]);
        }
        return weights;
    }

    /** The panes were moved. */
    public void keepLayout(String of, int... weights) {
        StringBuilder text = new StringBuilder();
        for (int weight : weights) {
            text.append(text.length() == 0 ? "" : " ").append(weight);
        }
        put(LAYOUT + "." + of, text.toString());
    }

    private void put(String key, String value) {
        node.put(key, value);
        try {
            node.flush();
        } catch (BackingStoreException unwritable) {
            // What cannot be remembered must not keep anybody from working.
            ILog.of(Settings.class).warn("settings cannot be written", unwritable);
        }
    }

    private static Optional<Path> path(String text) {
        try {
            return text.isBlank() ? Optional.empty() : Optional.of(Path.of(text));
        } catch (InvalidPathException notOfThisSystem) {
            return Optional.empty();
        }
    }
}
