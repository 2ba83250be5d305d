// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.firm;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import twinfeed.document.Firm;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.pricing.texts.StandingTextFile;
import twinfeed.pricing.texts.StandingTexts;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.refusal.Refusals;

/**
 * A folder with one firm's files: {@value FirmFile#NAME}, the logo, and its wording of the standing texts. Everything is checked
 * before it is written, so that what lies there can be used.
 *
 * @param folder the folder; it need not be there yet
 */
public record FirmFolder(Path folder) {
    private static final String WORDING = "standing-texts*.properties";

    /** Whether anything of the firm lies there. */
    public boolean filled() {
        return Files.exists(file()) || !wordings(folder).isEmpty();
    }

    /**
     * The firm for a paper.
     *
     * @throws InputException if somebody has changed the files so that they cannot be used
     */
    public FirmFile firm() {
        return FirmFile.beside(file());
    }

    /**
     * What is entered of the firm.
     *
     * @throws InputException if the file cannot be read
     */
    public FirmEntries entries() {
        return Files.exists(file()) ? FirmEntries.of(PropertyLines.read(file())) : FirmEntries.NONE;
    }

    /**
     * Writes who the firm is.
     *
     * @throws InputException if colour or logo cannot be used, or the file cannot be written; the former stays then
     */
    public void save(FirmEntries entries) {
        if (!FirmEntries.colour(entries.accent())) {
            throw refused("accent", entries.accent(), Refusals.wrong("firm.accent"), Refusals.right("firm.accent"));
        }
        if (!entries.logo().isBlank()) {
            check(folder.resolve(entries.logo()));
        }
        write(file(), PropertyLines.write(entries.values()));
    }

    /**
     * Copies a picture into the folder, to be the logo.
     *
     * @return its name there
     * @throws InputException if it is no PNG or JPEG of at most 4 MiB, or cannot be copied
     */
    public String takeLogo(Path picture) {
        byte[] content = check(picture);
        String name = String.valueOf(picture.getFileName());
        write(folder.resolve(name), content);
        return name;
    }

    private byte[] check(Path picture) {
        try {
            if (!Files.isRegularFile(picture) || Files.size(picture) > FirmFile.LARGEST_LOGO) {
                throw refused("logo", picture.toString(), Refusals.wrong("firm.logo"), Refusals.text("firm.logo.any"));
            }
            byte[] content = Files.readAllBytes(picture);
            new Firm("", "", "", Firm.DEFAULT_ACCENT, content).picture();
            return content;
        } catch (IOException unreadable) {
            throw new InputException(
                    new InputProblem(
                            file().toString(),
                            0,
                            "logo",
                            picture.toString(),
                            String.valueOf(unreadable.getMessage()),
                            Refusals.text("firm.logo.any")),
                    unreadable);
        }
    }

    /** The texts that come with the program in a language, by key. */
    public static Map<String, String> shipped(Locale locale) {
        return StandingTexts.shipped(locale);
    }

    /** Whether a text may be left out: terms and exclusions, but no caution and no assumption. */
    public static boolean dispensable(String key) {
        return Stream.of(StandingTexts.Kind.values())
                .anyMatch(kind -> kind.dispensable() && key.startsWith(kind.key() + "."));
    }

    /**
     * The firm's own wording in the file of a language, by key; an empty text is left out of the papers.
     *
     * @throws InputException if the file cannot be read
     */
    public Map<String, String> wording(Locale locale) {
        Path file = wordingFile(locale);
        return Files.exists(file) ? PropertyLines.read(file) : new TreeMap<>();
    }

    /**
     * Writes the firm's own wording in a language.
     *
     * @throws InputException if a text cannot be used (its problems say why), or the file cannot be written; the former stays then
     */
    public void saveWording(Locale locale, Map<String, String> own) {
        StandingTextFile.check(wordingFile(locale).toString(), own, locale);
        write(wordingFile(locale), PropertyLines.write(new TreeMap<>(own)));
    }

    /** English has the file that holds where a language has none of its own. */
    private Path wordingFile(Locale locale) {
        String language = locale.getLanguage();
        return folder.resolve(
                language.equals("en") || language.isEmpty() ? StandingTextFile.NAME : StandingTextFile.name(locale));
    }

    /**
     * Takes over the firm that is described in another folder, as beside a price book. Does nothing where this one is filled already.
     *
     * @throws InputException if its files cannot be used or written
     */
    public void takeOver(Path from) {
        if (filled()
                || from.toAbsolutePath()
                        .normalize()
                        .equals(folder.toAbsolutePath().normalize())) {
            return;
        }
        FirmFolder other = new FirmFolder(from);
        for (Path wording : wordings(from)) {
            try {
                write(folder.resolve(String.valueOf(wording.getFileName())), Files.readAllBytes(wording));
            } catch (IOException unreadable) {
                throw Refusals.exception(unreadable, wording, "firm.wording");
            }
        }
        if (Files.exists(other.file())) {
            FirmEntries entries = other.entries();
            save(entries.logo().isBlank() ? entries : entries.withLogo(takeLogo(from.resolve(entries.logo()))));
        }
    }

    private static List<Path> wordings(Path folder) {
        List<Path> files = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (var found = Files.newDirectoryStream(folder, WORDING)) {
                found.forEach(files::add);
            } catch (IOException unreadable) {
                return List.of();
            }
        }
        return files;
    }

    private void write(Path file, byte[] content) {
        make();
        AtomicFile.write(file, content);
    }

    /**
     * Makes the folder, where it is not there yet.
     *
     * @throws InputException if it cannot be made
     */
    public void make() {
        try {
            Files.createDirectories(folder);
        } catch (IOException unwritable) {
            throw Refusals.exception(unwritable, folder, "firm.folder");
        }
    }

    private Path file() {
        return folder.resolve(FirmFile.NAME);
    }

    private InputException refused(String element, String reading, String wrong, String right) {
        return new InputException(new InputProblem(file().toString(), 0, element, reading, wrong, right));
    }
}
