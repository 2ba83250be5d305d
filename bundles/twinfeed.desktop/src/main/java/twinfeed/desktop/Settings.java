// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/**
 * What is remembered between two starts. What the person has chosen is one file, what the window remembers by itself (recent jobs,
 * layout) another. Written at once, so that a crash loses nothing.
 */
public final class Settings {
    /** How many recent jobs are remembered. */
    public static final int MOST_RECENT = 9;

    private static final String RECENT = "recent";
    private static final String PRICES = "prices";
    private static final String CATALOGUE = "catalogue";
    private static final String OFFICE = "office";
    private static final String JOBS = "jobs";
    private static final String LANGUAGE = "language";
    private static final String PAPERS = "papers";
    private static final String RULES = "rules";
    private static final String LAYOUT = "layout";
    private static final String SEPARATOR = "\n";

    private final SettingsFile chosen;
    private final SettingsFile state;

    /**
     * Kept in two files.
     *
     * @param chosen what the person has chosen
     * @param state what the window remembers by itself
     */
    public Settings(SettingsFile chosen, SettingsFile state) {
        this.chosen = chosen;
        this.state = state;
    }

    /** Kept where the platform wants it. Settings of a release that kept them elsewhere are taken over once. */
    public static Settings in(PlatformFolders folders) {
        SettingsFile chosen = new SettingsFile(folders.config().resolve("settings.properties"));
        SettingsFile state = new SettingsFile(folders.state().resolve("window.properties"));
        Settings settings = new Settings(chosen, state);
        if (!chosen.there() && !state.there()) {
            settings.takeOver(SettingsFile.read(folders.formerSettings()));
        }
        return settings;
    }

    private void takeOver(Properties former) {
        for (String key : former.stringPropertyNames()) {
            if (key.equals(RECENT) || key.startsWith(LAYOUT + ".")) {
                state.put(key, former.getProperty(key));
            } else if (List.of(PRICES, CATALOGUE, OFFICE, LANGUAGE).contains(key)) {
                chosen.put(key, former.getProperty(key));
            }
        }
    }

    /** Where what the person has chosen is kept. */
    public Path file() {
        return chosen.path();
    }

    /** Recent jobs, the newest first. */
    public List<Path> recent() {
        List<Path> files = new ArrayList<>();
        for (String each : state.get(RECENT, "").split(SEPARATOR)) {
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
        state.put(RECENT, String.join(SEPARATOR, texts));
    }

    /** The price book that was chosen last; empty if none ever was. */
    public Optional<Path> prices() {
        return path(chosen.get(PRICES, ""));
    }

    /** Another price book was chosen. */
    public void prices(Path book) {
        chosen.put(PRICES, book.toAbsolutePath().toString());
    }

    /** The folder in which quotes are issued; empty if none was chosen yet. */
    public Optional<Path> office() {
        return path(chosen.get(OFFICE, ""));
    }

    /** Quotes are issued in another folder from now on. */
    public void office(Path folder) {
        chosen.put(OFFICE, folder.toAbsolutePath().toString());
    }

    /** The catalogue that was chosen last; empty if none ever was. */
    public Optional<Path> catalogue() {
        return path(chosen.get(CATALOGUE, ""));
    }

    /** Another catalogue was chosen. */
    public void catalogue(Path file) {
        chosen.put(CATALOGUE, file.toAbsolutePath().toString());
    }

    /** The language that was chosen; that of the system if none ever was. */
    public String language() {
        return chosen.get(LANGUAGE, WindowLanguage.SYSTEM);
    }

    /** Another language was chosen, by its code; anything that is none means the system's. */
    public void language(String code) {
        chosen.put(LANGUAGE, code);
    }

    /** No price book is chosen any more. */
    public void noPrices() {
        chosen.put(PRICES, "");
    }

    /** No catalogue is chosen any more. */
    public void noCatalogue() {
        chosen.put(CATALOGUE, "");
    }

    /** No folder for quotes is chosen any more. */
    public void noOffice() {
        chosen.put(OFFICE, "");
    }

    /** The folder in which new jobs are proposed to be kept; empty if none was chosen. */
    public Optional<Path> jobs() {
        return path(chosen.get(JOBS, ""));
    }

    /** New jobs are proposed to be kept in a folder; empty for none. */
    public void jobs(Optional<Path> folder) {
        chosen.put(JOBS, folder.map(each -> each.toAbsolutePath().toString()).orElse(""));
    }

    /** The language of quotes and other papers, by its code; empty for the window's. */
    public String papers() {
        return chosen.get(PAPERS, "");
    }

    /** Papers are written in another language; empty for the window's. */
    public void papers(String code) {
        chosen.put(PAPERS, code);
    }

    /** Id of the wiring rules that new jobs name; empty for those that hold where a job names none. */
    public String rules() {
        return chosen.get(RULES, "");
    }

    /** New jobs name other wiring rules; empty for none. */
    public void rules(String id) {
        chosen.put(RULES, id);
    }

    /** Widths of the panes in parts of a thousand; the default where none, or another number of them, is remembered. */
    public int[] layout(String of, int... standard) {
        String[] texts = state.get(LAYOUT + "." + of, "").split(" ");
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
        state.put(LAYOUT + "." + of, text.toString());
    }

    private static Optional<Path> path(String text) {
        try {
            return text.isBlank() ? Optional.empty() : Optional.of(Path.of(text));
        } catch (InvalidPathException notOfThisSystem) {
            return Optional.empty();
        }
    }
}
