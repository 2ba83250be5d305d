// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.settings;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.WindowLanguage;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.model.io.InputException;
import twinfeed.usecase.firm.FirmFolder;

/**
 * The standing texts of the papers: a list of all, and below it the one that is selected, to be worded anew. A text that is the one
 * shipped is kept in no file, so that a later release may better it.
 */
final class WordingSection {
    private static final List<String> KINDS = List.of("term", "exclusion", "caution", "assumption");

    private final JobServices services;
    private final Threads threads;
    private final Words words;
    private final FirmFolder folder;
    private final SettingForm form;
    private final CCombo language;
    private final Table table;
    private final Columns columns;
    private final Text text;
    private final Button shippedKey;
    private final Button leaveOut;
    private final Label state;
    private Map<String, String> shipped = Map.of();
    private Map<String, String> own = new TreeMap<>();
    private List<String> keys = List.of();

    WordingSection(
            Composite parent, JobServices services, Threads threads, Words words, FirmFolder folder, Runnable fit) {
        this.services = services;
        this.threads = threads;
        this.words = words;
        this.folder = folder;
        this.form = new SettingForm(parent, words, "settings.texts", fit);
        List<String> names = WindowLanguage.CODES.stream()
                .map(code -> new Words(Locale.forLanguageTag(code)).get("language.own"))
                .toList();
        int papers = Math.max(0, WindowLanguage.CODES.indexOf(services.papers().getLanguage()));
        this.language = form.choice("settings.texts.language", names, papers, any -> read());
        this.table = new Table(form.body(), SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION);
        table.setHeaderVisible(true);
        for (String key : List.of("settings.texts.kind", "settings.texts.whose", "settings.texts.text")) {
            new TableColumn(table, SWT.NONE).setText(words.get(key));
        }
        table.setLayoutData(across(9 * Controls.lineHeight(table)));
        table.setData("twinfeed.field", "settings.texts.list");
        Controls.name(table, words.get("settings.texts"));
        this.columns = Columns.of(table, 2, 240, 3);
        this.text = new Text(form.body(), SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        text.setLayoutData(across(4 * Controls.lineHeight(text)));
        text.setData("twinfeed.field", "settings.texts.text");
        Controls.describe(text, words.get("settings.texts.text"), () -> words.get("settings.texts.text.help"));
        text.setToolTipText(words.get("settings.texts.text.help"));
        text.addListener(
                SWT.Traverse,
                event -> event.doit |=
                        event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        text.addListener(SWT.FocusOut, event -> take());
        Composite line = Controls.columns(form.body(), 4);
        line.setLayoutData(Controls.across(form.body()));
        Button takeKey = Controls.push(line, words.get("settings.texts.take"), "settings.texts.take", this::take);
        this.shippedKey =
                Controls.push(line, words.get("settings.texts.shipped"), "settings.texts.shipped", this::asShipped);
        this.leaveOut =
                Controls.push(line, words.get("settings.texts.leaveOut"), "settings.texts.leaveOut", this::leaveOut);
        Button addKey = Controls.push(line, words.get("settings.texts.add"), "settings.texts.add", this::add);
        RowMenu menu = RowMenu.over(table);
        List.of(takeKey, shippedKey, leaveOut, addKey).forEach(menu::button);
        menu.copy(words);
        this.state = form.message("settings.texts.state");
        table.addListener(SWT.Selection, event -> select());
        read();
    }

    private GridData across(int height) {
        GridData data = Controls.across(form.body());
        data.heightHint = height;
        return data;
    }

    private Locale locale() {
        return Locale.forLanguageTag(WindowLanguage.CODES.get(Math.max(0, language.getSelectionIndex())));
    }

    /** The wording of the chosen language, the firm's first. */
    private void read() {
        shipped = FirmFolder.shipped(locale());
        try {
            own = new TreeMap<>(source().wording(locale()));
            form.say(state, "", Tone.QUIET);
        } catch (RuntimeException unreadable) {
            own = new TreeMap<>();
            form.say(state, "\u2717 " + unreadable.getMessage(), Tone.BAD);
        }
        list();
        table.select(0);
        select();
    }

    /** Until the firm has its own folder, its wording is that beside the price book. */
    private FirmFolder source() {
        JobServices.@Nullable Prices prices = services.prices();
        @Nullable
        Path beside = prices == null ? null : prices.file().toAbsolutePath().getParent();
        return folder.filled() || beside == null ? folder : new FirmFolder(beside);
    }

    private void list() {
        List<String> all = new ArrayList<>(own.keySet());
        shipped.keySet().stream().filter(key -> !own.containsKey(key)).forEach(all::add);
        keys = all.stream()
                .sorted(java.util.Comparator.comparingInt((String key) -> Math.max(0, KINDS.indexOf(kind(key))))
                        .thenComparing(key -> key))
                .toList();
        table.removeAll();
        for (String key : keys) {
            new TableItem(table, SWT.NONE).setText(new String[] {
                words.get("settings.texts.kind." + kind(key)),
                whose(key),
                said(key).replace('\n', ' ')
            });
        }
        columns.fit();
    }

    private static String kind(String key) {
        String kind = key.replaceFirst("\\..*", "");
        return KINDS.contains(kind) ? kind : "other";
    }

    private String whose(String key) {
        String mine = own.get(key);
        if (mine == null) {
            return words.get("settings.texts.whose.shipped");
        }
        return words.get(mine.isBlank() ? "settings.texts.whose.out" : "settings.texts.whose.own");
    }

    private String said(String key) {
        return own.getOrDefault(key, shipped.getOrDefault(key, ""));
    }

    private @Nullable String selected() {
        int at = table.getSelectionIndex();
        return at < 0 || at >= keys.size() ? null : keys.get(at);
    }

    private void select() {
        String key = selected();
        text.setEnabled(key != null);
        text.setText(key == null ? "" : said(key));
        shippedKey.setEnabled(key != null && own.containsKey(key));
        leaveOut.setEnabled(key != null
                && shipped.containsKey(key)
                && FirmFolder.dispensable(key)
                && !said(key).isBlank());
    }

    /** Takes the wording that stands in the field. */
    private void take() {
        String key = selected();
        if (key == null) {
            return;
        }
        String typed = text.getText().replace(Text.DELIMITER, "\n").strip();
        if (!typed.equals(said(key))) {
            change(key, typed.equals(shipped.get(key)) ? null : typed);
        }
    }

    private void asShipped() {
        String key = selected();
        if (key != null) {
            change(key, null);
        }
    }

    private void leaveOut() {
        String key = selected();
        if (key != null) {
            change(key, "");
        }
    }

    /** Another text of the firm's own, of the kind of the selected one. */
    private void add() {
        String key = selected();
        String kind = key == null || kind(key).equals("other") ? "term" : kind(key);
        int number = 1;
        while (own.containsKey(kind + ".own." + number)) {
            number++;
        }
        change(kind + ".own." + number, words.get("settings.texts.new"));
        text.setFocus();
        text.selectAll();
    }

    private void change(String key, @Nullable String wording) {
        Map<String, String> changed = new TreeMap<>(own);
        if (wording == null) {
            changed.remove(key);
        } else {
            changed.put(key, wording);
        }
        try {
            FirmFolder from = source();
            folder.takeOver(from.folder());
            folder.saveWording(locale(), changed);
        } catch (InputException refused) {
            form.say(
                    state,
                    "\u2717 "
                            + refused.problems().stream()
                                    .map(each -> each.wrong() + "; " + each.right())
                                    .collect(Collectors.joining(". ")),
                    Tone.BAD);
            return;
        }
        own = changed;
        form.say(state, words.format("settings.texts.kept", Map.of("folder", folder.folder())), Tone.QUIET);
        list();
        table.select(Math.max(0, keys.indexOf(key)));
        table.showSelection();
        select();
        threads.display().execute(() -> services.useFirm(folder));
    }
}
