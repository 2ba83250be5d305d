// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.e4.ui.workbench.modeling.EPartService.PartState;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.window.JobParts;
import twinfeed.document.shape.Tone;

/**
 * Every text of the window can be read against what it stands on. Source of the limit 4.5 : 1, and of 3 : 1 for what is drawn: Web Content
 * Accessibility Guidelines (WCAG) 2.1, success criteria 1.4.3 and 1.4.11; of the grounds: the window colours of the light and the dark form
 * of the usual theme of GTK 3. The pom runs it in the theme that is set, and in a dark one.
 */
final class ContrastWindowTest extends DemoWindow {
    private static final double TEXT = 4.5;
    private static final double DRAWN = 3;

    /** Ground and text: of windows and of lists, light and dark. */
    private static final int[][] THEMES = {
        {0xF6F5F4, 0x2E3436}, {0xFFFFFF, 0x000000}, {0x353535, 0xEEEEEC}, {0x2D2D2D, 0xFFFFFF}
    };

    private final Set<String> unreadable = new TreeSet<>();

    @BeforeAll
    static void open() throws Exception {
        copyDemo();
        openWithOneCandidate();
    }

    @AfterAll
    static void end() {
        window.giveUp();
    }

    private static RGB rgb(int colour) {
        return new RGB(colour >> 16 & 0xFF, colour >> 8 & 0xFF, colour & 0xFF);
    }

    private void atLeast(double limit, String what, RGB text, RGB ground) {
        double contrast = ThemeColours.contrast(text, ground);
        if (contrast < limit) {
            unreadable.add(String.format(java.util.Locale.ROOT, "%s: %s on %s is %.2f", what, text, ground, contrast));
        }
    }

    @Test
    @Order(1)
    void textsOnTintedGroundsCanBeReadInBothThemes() {
        ui.run(() -> {
            Shell shell = new Shell(ui.shell(), SWT.NONE);
            for (int[] theme : THEMES) {
                shell.setBackground(new Color(rgb(theme[0])));
                shell.setForeground(new Color(rgb(theme[1])));
                RGB text = rgb(theme[1]);
                for (Tone tone : Tone.values()) {
                    atLeast(
                            TEXT,
                            "notice " + tone,
                            text,
                            ThemeColours.tint(tone, shell, 0.18).getRGB());
                    RGB tones = ThemeColours.of(tone, shell).getRGB();
                    atLeast(
                            TEXT,
                            "unit " + tone,
                            tones,
                            ThemeColours.between(shell, 0.08).getRGB());
                    atLeast(
                            DRAWN,
                            "bar " + tone,
                            tones,
                            ThemeColours.between(shell, 0.10).getRGB());
                }
                atLeast(
                        TEXT,
                        "next step",
                        text,
                        ThemeColours.tint(Tone.WATER, shell, 0.12).getRGB());
                atLeast(DRAWN, "axis", ThemeColours.between(shell, 0.55).getRGB(), rgb(theme[0]));
            }
            shell.dispose();
        });
        assertEquals(Set.of(), unreadable);
    }

    @Test
    @Order(2)
    void everyTextOfEveryPageCanBeRead() throws Exception {
        int seen = 0;
        for (int i = 0; i < job().survey().size(); i++) {
            int page = i;
            ui.run(() -> job().survey().show(page));
            seen += look("page " + (page + 1));
        }
        ui.run(() -> job().survey().show(0));
        ui.shoot("79-contrast" + System.getProperty("twinfeed.shots.suffix", ""));
        for (String part :
                List.of(JobParts.HELP, JobParts.ISSUED, JobParts.QUICK, JobParts.SETTINGS, "twinfeed.desktop.start")) {
            ui.run(() -> window.partService().showPart(part, PartState.ACTIVATE));
            seen += look(part);
        }
        assertTrue(seen > 300, "texts: " + seen);
        assertEquals(Set.of(), unreadable);
    }

    private int look(String where) {
        return ui.ask(() -> {
            List<Control> texts = ui.all(
                    Control.class,
                    each -> each.isVisible()
                            && each.isEnabled()
                            && (each instanceof Label
                                    || each instanceof CLabel
                                    || each instanceof Text
                                    || each instanceof Link
                                    || each instanceof Table
                                    || each instanceof Tree));
            for (Control each : texts) {
                String name = where + ", " + each.getClass().getSimpleName() + " " + each.getData("twinfeed.field");
                RGB ground = each.getBackground().getRGB();
                if (each instanceof Link link) {
                    atLeast(TEXT, name, link.getLinkForeground().getRGB(), ground);
                } else {
                    atLeast(TEXT, name, each.getForeground().getRGB(), ground);
                }
                cells(each, name, ground);
            }
            return texts.size();
        });
    }

    private void cells(Control control, String name, RGB ground) {
        if (control instanceof Table table) {
            for (TableItem item : table.getItems()) {
                for (int i = 0; i < table.getColumnCount(); i++) {
                    atLeast(TEXT, name, item.getForeground(i).getRGB(), ground);
                }
            }
        } else if (control instanceof Tree tree) {
            for (TreeItem group : tree.getItems()) {
                for (TreeItem item : group.getItems()) {
                    for (int i = 0; i < tree.getColumnCount(); i++) {
                        atLeast(TEXT, name, item.getForeground(i).getRGB(), ground);
                    }
                }
            }
        }
    }
}
