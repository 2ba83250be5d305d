// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.settings;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.ColorDialog;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.usecase.firm.FirmEntries;
import twinfeed.usecase.firm.FirmFolder;

/** Who quotes: name, address, logo and colour. Each entry is written to the firm's own folder when it is made. */
final class FirmSection {
    private final JobServices services;
    private final Threads threads;
    private final Words words;
    private final FirmFolder folder;
    private final SettingForm form;
    private final SettingForm.Entry name;
    private final SettingForm.Entry address;
    private final SettingForm.Entry contact;
    private final SettingForm.Entry taxNumber;
    private final SettingForm.Entry accent;
    private final SettingForm.Entry logo;
    private final Label state;
    private String logoName = "";

    FirmSection(Composite parent, JobServices services, Threads threads, Words words, FirmFolder folder, Runnable fit) {
        this.services = services;
        this.threads = threads;
        this.words = words;
        this.folder = folder;
        SettingChecks checks = new SettingChecks(words);
        FirmEntries first = first();
        this.form = new SettingForm(parent, words, "settings.firm", fit);
        UnaryOperator<String> anything = checks::anything;
        this.name = form.line("settings.firm.name", first.name(), anything, any -> save());
        this.address = form.lines("settings.firm.address", lines(first.address()), 3, any -> save());
        this.contact = form.lines("settings.firm.contact", lines(first.contact()), 3, any -> save());
        this.taxNumber = form.line("settings.firm.taxNumber", first.taxNumber(), anything, any -> save());
        this.accent = form.line("settings.firm.accent", first.accent(), checks::colour, any -> save());
        accent.key("new.choose", () -> chooseColour(parent));
        this.logo = form.line("settings.firm.logo", shownLogo(first), checks::logo, this::takeLogo);
        logo.key("new.choose", () -> FileQuestion.logo(parent.getShell(), words)
                .open("settings.firm.logo", null)
                .ifPresent(file -> logo.enter(file.toString())));
        this.logoName = first.logo();
        this.state = form.message("settings.firm.state");
        @Nullable Path beside = besideBook();
        if (!folder.filled() && beside != null && !first.equals(FirmEntries.NONE)) {
            form.say(state, words.format("settings.firm.beside", Map.of("folder", beside)), Tone.QUIET);
        }
    }

    /** The firm of the settings, or what is described beside the price book until there is one. */
    private FirmEntries first() {
        try {
            @Nullable Path beside = besideBook();
            return folder.filled() || beside == null ? folder.entries() : new FirmFolder(beside).entries();
        } catch (RuntimeException unreadable) {
            return FirmEntries.NONE;
        }
    }

    /** The folder of the price book that was chosen; the firm lay there before it was entered here. */
    private @Nullable Path besideBook() {
        JobServices.@Nullable Prices prices = services.prices();
        return prices == null ? null : prices.file().toAbsolutePath().getParent();
    }

    private String shownLogo(FirmEntries entries) {
        if (entries.logo().isBlank()) {
            return "";
        }
        @Nullable Path beside = besideBook();
        Path where = folder.filled() || beside == null ? folder.folder() : beside;
        return where.resolve(entries.logo()).toString();
    }

    private static String lines(String stored) {
        return stored.strip().replaceAll("\\s*;\\s*", "\n");
    }

    private static String stored(String lines) {
        return lines.strip().replaceAll("\\s*\\n\\s*", "; ");
    }

    private FirmEntries entered() {
        return new FirmEntries(
                name.value(),
                stored(address.value()),
                stored(contact.value()),
                taxNumber.value(),
                accent.right() ? accent.value() : "",
                logoName);
    }

    private void save() {
        FirmEntries entries = entered();
        @Nullable Path beside = besideBook();
        write(() -> {
            if (beside != null) {
                folder.takeOver(beside);
            }
            folder.save(entries);
        });
    }

    private void takeLogo(String typed) {
        if (typed.isEmpty()) {
            logoName = "";
            save();
            return;
        }
        @Nullable Path beside = besideBook();
        write(() -> {
            if (beside != null) {
                folder.takeOver(beside);
            }
            String taken = folder.takeLogo(Path.of(typed));
            threads.display().execute(() -> {
                logoName = taken;
                logo.show(folder.folder().resolve(taken).toString());
                save();
            });
        });
    }

    /** Writes out of the way; then the papers are those of the changed firm, or it is said why they are not. */
    private void write(Runnable work) {
        threads.quick().execute(() -> {
            try {
                work.run();
                threads.display().execute(() -> {
                    services.useFirm(folder);
                    logo.show(shownLogo(folder.entries()));
                    form.say(state, words.format("settings.firm.kept", Map.of("folder", folder.folder())), Tone.QUIET);
                });
            } catch (RuntimeException refused) {
                threads.display()
                        .execute(() -> form.say(
                                state,
                                "\u2717 "
                                        + words.format(
                                                "save.refused", Map.of("reason", String.valueOf(refused.getMessage()))),
                                Tone.BAD));
            }
        });
    }

    private void chooseColour(Composite parent) {
        ColorDialog dialog = new ColorDialog(parent.getShell());
        if (accent.right() && !accent.value().isEmpty()) {
            int rgb = Integer.parseInt(accent.value(), 16);
            dialog.setRGB(new RGB(rgb >> 16, rgb >> 8 & 0xFF, rgb & 0xFF));
        }
        @Nullable RGB chosen = dialog.open();
        if (chosen != null) {
            int rgb = chosen.red << 16 | chosen.green << 8 | chosen.blue;
            accent.enter(Integer.toHexString(1 << 24 | rgb).substring(1).toUpperCase(Locale.ROOT));
        }
    }
}
