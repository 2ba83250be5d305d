// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.TabFolder;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.Settings;
import twinfeed.desktop.WindowLanguage;
import twinfeed.desktop.part.JobPart;
import twinfeed.desktop.text.Words;

/** The shared window with the demonstration in a folder of the test's own, whose steps build on one another. */
@ExtendWith(Window.Shared.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
abstract class DemoWindow {
    @TempDir
    static Path folder;

    /** The texts of the window, in its own language. */
    static final Words WORDS = new Words(WindowLanguage.of("", Locale.getDefault()));

    static Window window;
    static Ui ui;

    /** Copies the demonstration and takes hold of the window. */
    static void copyDemo() throws Exception {
        Offices.demoInto(folder);
        window = Window.Shared.get();
        ui = window.ui();
    }

    /** Opens the demonstration's job with one candidate only, which is judged sooner. */
    static void openWithOneCandidate() throws Exception {
        Offices.onlyOneCandidate(folder);
        window.open(folder);
        window.settled();
    }

    /** Shows one of the tabs in the middle: checks, charts, the customer's page. */
    static void tab(int number) {
        ui.run(() -> {
            TabFolder tabs = ui.field(TabFolder.class, "findings.tabs");
            tabs.setSelection(number);
            Event event = new Event();
            event.item = tabs.getItem(number);
            tabs.notifyListeners(SWT.Selection, event);
        });
    }

    /** From now on quotes are issued into this folder. */
    static void chooseOffice(Path office) throws Exception {
        ui.run(() -> window.context().get(Settings.class).office(office));
    }

    /** Leaves the window as other tests expect it: nothing changed and no folder chosen, and what was issued can be removed. */
    static void leave() throws Exception {
        window.giveUp();
        ui.run(() -> window.context().get(Settings.class).noOffice());
        Offices.writable(folder);
    }

    /** What the line at the foot of the window says of the last action; only in the window's thread. */
    static String action() {
        return ui.field(CLabel.class, "status.action").getText().replace("&&", "&");
    }

    /** A text of the window, by its key, without the mark of its mnemonic. */
    static String word(String key) {
        return WORDS.get(key).replace("&", "");
    }

    /** What a message begins with, up to its first value. */
    static String begin(String key) {
        return word(key).replaceFirst("(?s)\\{.*", "");
    }

    static JobPart job() {
        return window.job();
    }
}
