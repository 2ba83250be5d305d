// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.text.Words;

/**
 * Asks for a file by the system's own dialogue.
 *
 * @param shell over which window
 * @param words texts
 * @param kinds which kinds of files are offered, at least one; the first is proposed
 */
public record FileQuestion(Shell shell, Words words, List<Kind> kinds) {
    public FileQuestion {
        kinds = List.copyOf(kinds);
    }

    /** Ending of a file's name, with the dot, and the key of what such files are called. */
    public record Kind(String ending, String name) {}

    /** A job. */
    public static FileQuestion job(Shell shell, Words words) {
        return new FileQuestion(shell, words, List.of(new Kind(".job", "files.jobs")));
    }

    /** A catalogue of heaters. */
    public static FileQuestion catalogue(Shell shell, Words words) {
        return new FileQuestion(shell, words, List.of(new Kind(".catalogue", "files.catalogues")));
    }

    /** A price book. */
    public static FileQuestion prices(Shell shell, Words words) {
        return new FileQuestion(shell, words, List.of(new Kind(".csv", "files.prices")));
    }

    /** A picture. */
    public static FileQuestion picture(Shell shell, Words words) {
        return new FileQuestion(shell, words, List.of(new Kind(".svg", "files.svg"), new Kind(".png", "files.png")));
    }

    /** A logo. */
    public static FileQuestion logo(Shell shell, Words words) {
        return new FileQuestion(shell, words, List.of(new Kind(".png", "files.logo"), new Kind(".jpg", "files.jpg")));
    }

    /** A workbook. */
    public static FileQuestion workbook(Shell shell, Words words) {
        return new FileQuestion(shell, words, List.of(new Kind(".xlsx", "files.workbooks")));
    }

    /** A list of dwellings as text or as a workbook. */
    public static FileQuestion dwellings(Shell shell, Words words) {
        return new FileQuestion(
                shell, words, List.of(new Kind(".csv", "files.dwellings"), new Kind(".xlsx", "files.workbooks")));
    }

    /** A price list as text or as a workbook. */
    public static FileQuestion priceLists(Shell shell, Words words) {
        return new FileQuestion(
                shell, words, List.of(new Kind(".csv", "files.prices"), new Kind(".xlsx", "files.workbooks")));
    }

    /** A workbook or a PDF. */
    public static FileQuestion paper(Shell shell, Words words) {
        return new FileQuestion(
                shell, words, List.of(new Kind(".xlsx", "files.workbooks"), new Kind(".pdf", "files.pdfs")));
    }

    /** A PDF, to be printed, or a workbook. */
    public static FileQuestion print(Shell shell, Words words) {
        return new FileQuestion(
                shell, words, List.of(new Kind(".pdf", "files.pdfs"), new Kind(".xlsx", "files.workbooks")));
    }

    /** Which file is to be opened, looked for in a folder or beside a file; empty if the person would rather not say. */
    public Optional<Path> open(String title, @Nullable Path proposal) {
        return ask(SWT.OPEN, title, proposal);
    }

    /** Where a file is to be written, with the right ending; the dialogue asks before one is replaced. */
    public Optional<Path> save(String title, @Nullable Path proposal) {
        return ask(SWT.SAVE, title, proposal);
    }

    private Optional<Path> ask(int style, String title, @Nullable Path proposal) {
        FileDialog dialog = new FileDialog(shell, style);
        dialog.setText(words.get(title));
        dialog.setFilterExtensions(
                kinds.stream().map(kind -> "*" + kind.ending()).toArray(String[]::new));
        dialog.setFilterNames(kinds.stream().map(kind -> words.get(kind.name())).toArray(String[]::new));
        dialog.setOverwrite(true);
        if (proposal != null && Files.isDirectory(proposal)) {
            dialog.setFilterPath(proposal.toAbsolutePath().toString());
        } else if (proposal != null) {
            dialog.setFilterPath(String.valueOf(proposal.toAbsolutePath().getParent()));
            dialog.setFileName(String.valueOf(proposal.getFileName()));
        }
        String name = dialog.open();
        if (name == null || style != SWT.SAVE) {
            return Optional.ofNullable(name).map(Path::of);
        }
        String full = named(name, dialog.getFilterIndex());
        return Optional.of(Path.of(full)).filter(path -> full.equals(name) || mayReplace(path));
    }

    /**
     * A name with the ending of the kind that was picked. An ending of the first kind gives way to it, for that is what was
     * proposed; a typed ending of another kind stands.
     *
     * @param picked number of the picked kind; negative if the system does not say
     */
    String named(String name, int picked) {
        String proposed = kinds.get(0).ending();
        String wanted =
                kinds.get(Math.max(0, Math.min(picked, kinds.size() - 1))).ending();
        if (kinds.stream().anyMatch(kind -> name.endsWith(kind.ending())) && !name.endsWith(proposed)) {
            return name;
        }
        String bare = name.endsWith(proposed) ? name.substring(0, name.length() - proposed.length()) : name;
        return bare + wanted;
    }

    /** The dialogue asked about the name as it was before it got its ending. */
    private boolean mayReplace(Path path) {
        return !Files.exists(path)
                || Dialogs.ask(
                        shell,
                        words,
                        words.get("files.replace"),
                        words.format("files.replace.text", Map.of("file", path)),
                        words.get("files.replace.do"));
    }
}
