// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Decorations;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

/** What can be read at the moment in all windows of a display: labels, keys, cells, choices, tooltips, menus. In the display's thread. */
final class VisibleTexts {
    private final Set<String> found = new LinkedHashSet<>();

    private VisibleTexts() {}

    /** All of them, without marks of mnemonics. */
    static Set<String> of(Display display) {
        VisibleTexts texts = new VisibleTexts();
        for (Shell shell : display.getShells()) {
            if (shell.isVisible()) {
                texts.add(shell.getText());
                texts.menu(shell.getMenuBar());
                texts.control(shell);
            }
        }
        return texts.found;
    }

    private void add(String text) {
        if (text != null && !text.isBlank()) {
            found.add(text.replaceAll("&(.)", "$1").strip());
        }
    }

    private void menu(Menu menu) {
        if (menu != null && !menu.isDisposed()) {
            for (MenuItem item : menu.getItems()) {
                add(item.getText().replaceFirst("\t.*", ""));
                menu(item.getMenu());
            }
        }
    }

    private void control(Control control) {
        if (!control.isVisible()) {
            return;
        }
        add(control.getToolTipText());
        if (!(control instanceof Decorations)) {
            menu(control.getMenu());
        }
        own(control).forEach(this::add);
        if (control instanceof Composite composite) {
            Stream.of(composite.getChildren()).forEach(this::control);
        }
    }

    private static List<String> own(Control control) {
        if (control instanceof Label label) {
            return List.of(label.getText());
        } else if (control instanceof CLabel label) {
            return List.of(label.getText());
        } else if (control instanceof Button button) {
            return List.of(button.getText());
        } else if (control instanceof Link link) {
            return List.of(link.getText().replaceAll("</?a[^>]*>", ""));
        } else if (control instanceof Group group) {
            return List.of(group.getText());
        } else if (control instanceof Text text) {
            return List.of(text.getText(), text.getMessage());
        } else if (control instanceof StyledText text) {
            return text.getText().lines().toList();
        } else if (control instanceof Combo combo) {
            return List.of(combo.getItems());
        } else if (control instanceof CCombo combo) {
            return List.of(combo.getItems());
        } else if (control instanceof TabFolder folder) {
            return Stream.of(folder.getItems()).map(Item::getText).toList();
        } else if (control instanceof CTabFolder folder) {
            return Stream.of(folder.getItems())
                    .flatMap(item -> Stream.of(item.getText(), String.valueOf(item.getToolTipText())))
                    .filter(text -> !text.equals("null"))
                    .toList();
        } else if (control instanceof Table table) {
            return cells(table);
        } else if (control instanceof Tree tree) {
            return cells(tree);
        }
        return List.of();
    }

    private static List<String> cells(Table table) {
        List<String> texts = new ArrayList<>();
        for (TableColumn column : table.getColumns()) {
            texts.add(column.getText());
            texts.add(column.getToolTipText());
        }
        for (TableItem item : table.getItems()) {
            for (int i = 0; i < Math.max(1, table.getColumnCount()); i++) {
                texts.add(item.getText(i));
            }
        }
        return texts.stream().filter(text -> text != null).toList();
    }

    private static List<String> cells(Tree tree) {
        List<String> texts = new ArrayList<>();
        for (TreeColumn column : tree.getColumns()) {
            texts.add(column.getText());
        }
        Stream.of(tree.getItems()).forEach(item -> cells(item, Math.max(1, tree.getColumnCount()), texts));
        return texts;
    }

    private static void cells(TreeItem item, int columns, List<String> texts) {
        for (int i = 0; i < columns; i++) {
            texts.add(item.getText(i));
        }
        Stream.of(item.getItems()).forEach(each -> cells(each, columns, texts));
    }
}
