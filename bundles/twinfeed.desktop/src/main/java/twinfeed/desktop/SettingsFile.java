// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.TreeSet;
import org.eclipse.core.runtime.ILog;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.InputException;

/** One file of settings, a property file in UTF-8. Each change is written at once, whole or not at all. */
public final class SettingsFile {
    private final Path file;
    private Properties values;

    /** Reads it if it is there. */
    public SettingsFile(Path file) {
        this.file = file;
        this.values = read(file);
    }

    /** Where it is. */
    public Path path() {
        return file;
    }

    /** Whether anything was ever kept there. */
    public boolean there() {
        return Files.exists(file);
    }

    /** A value, or another where none is kept. */
    public String get(String key, String otherwise) {
        return values.getProperty(key, otherwise);
    }

    /** Keeps a value; an empty one is none. */
    public void put(String key, String value) {
        // Another window may have written meanwhile; its other values stay.
        if (there()) {
            values = read(file);
        }
        if (value.isEmpty()) {
            values.remove(key);
        } else {
            values.setProperty(key, value);
        }
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            AtomicFile.write(file, text().getBytes(StandardCharsets.UTF_8));
        } catch (IOException | InputException unwritable) {
            // What cannot be remembered must not keep anybody from working.
            ILog.of(SettingsFile.class).warn("settings cannot be written: " + file, unwritable);
        }
    }

    /** The values of a property file; none where it is not there or cannot be read. */
    static Properties read(Path file) {
        Properties read = new Properties();
        if (Files.isRegularFile(file)) {
            try {
                read.load(new StringReader(Files.readString(file)));
            } catch (IOException | IllegalArgumentException unreadable) {
                ILog.of(SettingsFile.class).warn("settings cannot be read: " + file, unreadable);
                return new Properties();
            }
        }
        return read;
    }

    /** Sorted and without a date, so that the same settings are the same bytes. */
    private String text() throws IOException {
        StringBuilder sorted = new StringBuilder();
        for (String key : new TreeSet<>(values.stringPropertyNames())) {
            Properties one = new Properties();
            one.setProperty(key, values.getProperty(key));
            StringWriter line = new StringWriter();
            one.store(line, null);
            line.toString().lines().filter(each -> !each.startsWith("#")).forEach(each -> sorted.append(each)
                    .append('\n'));
        }
        return sorted.toString();
    }
}
