// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.window;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.look.Dialogs;
import twinfeed.desktop.text.Words;

/** Files that are dropped onto the window: jobs are opened, lists too, pictures become photographs of the job that is looked at. */
public final class FileDrop {
    private static final String DWELLING = "dwelling";

    private final Shell shell;
    private final JobParts parts;
    private final Words words;

    /** For a window and its jobs. */
    public FileDrop(Shell shell, JobParts parts, Words words) {
        this.shell = shell;
        this.parts = parts;
        this.words = words;
    }

    /** From now on files can be dropped. */
    void listen() {
        DropTarget target = new DropTarget(shell, DND.DROP_COPY | DND.DROP_MOVE | DND.DROP_LINK | DND.DROP_DEFAULT);
        target.setTransfer(new Transfer[] {FileTransfer.getInstance()});
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragEnter(DropTargetEvent event) {
                // The file stays where it is, whatever the other program offers.
                event.detail = (event.operations & DND.DROP_COPY) != 0 ? DND.DROP_COPY : DND.DROP_LINK;
            }

            @Override
            public void drop(DropTargetEvent event) {
                if (event.data instanceof String[] names) {
                    take(Arrays.stream(names).map(Path::of).toList());
                }
            }
        });
    }

    /** Takes files that were dropped; of those that cannot be used it says so. */
    public void take(List<Path> files) {
        List<Path> pictures = new ArrayList<>();
        List<Path> unknown = new ArrayList<>();
        for (Path file : files) {
            String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
            if (name.endsWith(".job")) {
                parts.open(file);
            } else if (name.endsWith(".catalogue")) {
                parts.openHeaters(file);
            } else if (name.endsWith(".xlsx") || (name.endsWith(".csv") && dwellings(file))) {
                parts.openBatch(file);
            } else if (name.endsWith(".csv")) {
                parts.openPrices(file);
            } else if (name.matches(".*\\.(png|jpe?g)")) {
                pictures.add(file);
            } else {
                unknown.add(file);
            }
        }
        if (!pictures.isEmpty() && !parts.takePhotos(pictures)) {
            Dialogs.say(shell, words, words.get("application"), words.get("drop.noJob"));
        }
        if (!unknown.isEmpty()) {
            String names = unknown.stream().map(Path::toString).collect(Collectors.joining("\n"));
            Dialogs.say(shell, words, words.get("application"), words.format("drop.unknown", Map.of("files", names)));
        }
    }

    /** A list of dwellings has a column of that name in its first line that is no remark. */
    private static boolean dwellings(Path file) {
        try (BufferedReader reader = Files.newBufferedReader(file)) {
            return reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .findFirst()
                    .map(line -> line.toLowerCase(Locale.ROOT).contains(DWELLING))
                    .orElse(false);
        } catch (IOException | java.io.UncheckedIOException unreadable) {
            return false;
        }
    }
}
