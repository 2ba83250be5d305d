// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.settings;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import twinfeed.desktop.text.Words;
import twinfeed.usecase.firm.FirmEntries;

/**
 * What is wrong with an entry on the page of settings, in words; empty if nothing is. An empty entry is always right: it takes the
 * setting back.
 *
 * @param words the texts
 */
record SettingChecks(Words words) {
    /** Any text will do. */
    String anything(String text) {
        return "";
    }

    /** A colour as RRGGBB. */
    String colour(String text) {
        return FirmEntries.colour(text.strip()) ? "" : words.get("settings.problem.colour");
    }

    /** A folder that is there and in which files can be written. */
    String folder(String text) {
        return path(text, file -> {
            if (!Files.isDirectory(file)) {
                return words.format("settings.problem.noFolder", Map.of("folder", file));
            }
            return Files.isWritable(file) ? "" : words.format("settings.problem.readOnly", Map.of("folder", file));
        });
    }

    /** A price book. */
    String prices(String text) {
        return file(text, ".csv", ".xlsx");
    }

    /** A catalogue of heaters. */
    String catalogue(String text) {
        return file(text, ".catalogue");
    }

    /** A logo. */
    String logo(String text) {
        return file(text, ".png", ".jpg", ".jpeg");
    }

    private String file(String text, String... endings) {
        return path(text, file -> {
            if (!Files.isRegularFile(file)) {
                return words.format("settings.problem.noFile", Map.of("file", file));
            }
            String name = file.toString().toLowerCase(Locale.ROOT);
            for (String ending : endings) {
                if (name.endsWith(ending)) {
                    return "";
                }
            }
            return words.format("settings.problem.ending", Map.of("file", file, "endings", String.join(", ", endings)));
        });
    }

    private String path(String text, java.util.function.Function<Path, String> check) {
        if (text.isBlank()) {
            return "";
        }
        try {
            Path file = Path.of(text.strip());
            return file.isAbsolute() ? check.apply(file) : words.get("settings.problem.relative");
        } catch (InvalidPathException odd) {
            return words.format("new.problem.path", Map.of("name", odd.getInput()));
        }
    }
}
