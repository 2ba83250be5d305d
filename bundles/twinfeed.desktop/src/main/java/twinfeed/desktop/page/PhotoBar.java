// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.page;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.picture.Png;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.model.survey.Photo;

/** Below the list of photographs: keys to choose and to paste some, and the one that is chosen, small. */
final class PhotoBar {
    private static final int LONGEST = 240;

    private final FormContext context;
    private final Words words;
    private final Composite body;
    private final List<Button> keys;
    private final Label picture;
    private final Label said;
    private @Nullable Image image;
    private String shown = "";

    PhotoBar(Composite parent, FormContext context) {
        this.context = context;
        this.words = context.words();
        this.body = Controls.columns(parent, 2);
        body.setLayoutData(Controls.across(parent));
        this.keys = List.of(
                Controls.push(body, words.get("photo.choose"), "photo.choose", this::choose),
                Controls.push(body, words.get("photo.paste"), "photo.paste", this::paste));
        this.said = Controls.wrapped(body);
        said.setData(FieldRow.FIELD, "photo.said");
        Controls.show(said, "");
        this.picture = new Label(body, SWT.NONE);
        picture.setData(FieldRow.FIELD, "photo.picture");
        GridData data = new GridData(SWT.BEGINNING, SWT.TOP, false, false, 2, 1);
        data.exclude = true;
        picture.setLayoutData(data);
        body.addListener(SWT.Dispose, event -> drop());
    }

    /** The keys by which photographs come into the list. */
    List<Button> keys() {
        return keys;
    }

    private void choose() {
        FileDialog dialog = new FileDialog(body.getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText(words.get("photo.choose"));
        dialog.setFilterExtensions(new String[] {"*.jpg;*.jpeg;*.png;*.JPG;*.JPEG;*.PNG"});
        if (dialog.open() != null) {
            List<Path> files = new ArrayList<>();
            for (String name : dialog.getFileNames()) {
                files.add(Path.of(dialog.getFilterPath(), name));
            }
            context.session().photos().take(files, this::refused);
        }
    }

    /** Takes what is in the clipboard: a picture, or files of pictures. */
    private void paste() {
        Clipboard clipboard = new Clipboard(body.getDisplay());
        try {
            Object files = clipboard.getContents(FileTransfer.getInstance());
            Object pixels = clipboard.getContents(ImageTransfer.getInstance());
            if (files instanceof String[] names) {
                context.session()
                        .photos()
                        .take(java.util.Arrays.stream(names).map(Path::of).toList(), this::refused);
            } else if (pixels instanceof ImageData data) {
                context.session().photos().take(Png.of(data), this::refused);
            } else {
                say(words.get("photo.paste.none"), Tone.DOUBT);
            }
        } finally {
            clipboard.dispose();
        }
    }

    private void refused(String reason) {
        say("\u2717 " + reason, Tone.BAD);
    }

    /** Shows a photograph, or says what is missing; null shows none. */
    void show(@Nullable Photo photo) {
        String file = photo == null || photo.getFile() == null ? "" : photo.getFile();
        if (file.equals(shown)) {
            return;
        }
        shown = file;
        put(null);
        say("", Tone.QUIET);
        if (!file.isBlank()) {
            context.session().photos().read(file, LONGEST, content -> draw(file, content), reason -> {
                if (Objects.equals(file, shown)) {
                    refused(reason);
                }
            });
        }
    }

    private void draw(String file, byte[] content) {
        if (!body.isDisposed() && file.equals(shown)) {
            put(new Image(body.getDisplay(), new ByteArrayInputStream(content)));
            picture.setToolTipText(file.replace("&", "&&"));
        }
    }

    private void put(@Nullable Image next) {
        drop();
        image = next;
        picture.setImage(next);
        ((GridData) picture.getLayoutData()).exclude = next == null;
        picture.setVisible(next != null);
        PageView.relayout(body);
    }

    private void drop() {
        if (image != null) {
            image.dispose();
            image = null;
        }
    }

    private void say(String text, Tone tone) {
        if (!said.isDisposed()) {
            said.setForeground(ThemeColours.of(tone, said));
            if (Controls.show(said, text)) {
                PageView.relayout(body);
            }
        }
    }
}
