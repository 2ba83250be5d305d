// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import java.nio.file.Path;
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
 * @param ending ending of the file's name, with the dot
 * @param kind key of what such files are called
 */
record FileQuestion(Shell shell, Words words, String ending, String kind) {

    static FileQuestion job(Shell shell, Words words) {
        return new FileQuestion(shell, words, ".job", "files.jobs");
    }

    static FileQuestion catalogue(Shell shell, Words words) {
        return new FileQuestion(shell, words, ".catalogue", "files.catalogues");
    }

    static FileQuestion prices(Shell shell, Words words) {
        return new FileQuestion(shell, words, ".csv", "files.prices");
    }

    static FileQuestion workbook(Shell shell, Words words) {
        return new FileQuestion(shell, words, ".xlsx", "files.workbooks");
    }

    /** Which file is to be opened; empty if the person would rather not say. */
    Optional<Path> open(String title, @Nullable Path proposal) {
        return ask(SWT.OPEN, title, proposal);
    }

    /** Where a file is to be written, with the right ending; the dialogue asks before one is replaced. */
    Optional<Path> save(String title, @Nullable Path proposal) {
        return ask(SWT.SAVE, title, proposal)
                .map(path -> path.toString().endsWith(ending) ? path : Path.of(path + ending));
    }

    private Optional<Path> ask(int style, String title, @Nullable Path proposal) {
        FileDialog dialog = new FileDialog(shell, style);
        dialog.setText(words.get(title));
        dialog.setFilterExtensions(new String[] {"*" + ending});
        dialog.setFilterNames(new String[] {words.get(kind)});
        dialog.setOverwrite(true);
        if (proposal != null) {
            dialog.setFilterPath(String.valueOf(proposal.toAbsolutePath().getParent()));
            dialog.setFileName(String.valueOf(proposal.getFileName()));
        }
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }
}
