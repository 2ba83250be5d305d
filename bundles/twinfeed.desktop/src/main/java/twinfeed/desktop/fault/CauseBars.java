// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.fault;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Shortened;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.CauseRow;
import twinfeed.document.shape.Tone;

/** The causes, likeliest first: each with its name, a bar, the chance in a number and in a word. */
final class CauseBars {
    private static final int GAP = 8;

    private final Canvas canvas;
    private List<CauseRow> rows = List.of();

    CauseBars(Composite parent, Words words) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        canvas.setData("twinfeed.field", "causes");
        canvas.setLayoutData(Controls.across(parent));
        Controls.describe(canvas, words.get("faults.causes"), () -> rows.stream()
                .map(CauseRow::sentence)
                .collect(Collectors.joining("; ")));
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.MouseMove, event -> canvas.setToolTipText(tip(event.y)));
    }

    void show(List<CauseRow> next) {
        rows = List.copyOf(next);
        canvas.setData("twinfeed.rows", rows);
        ((GridData) canvas.getLayoutData()).heightHint = Math.max(1, rows.size() * rowHeight());
        canvas.redraw();
    }

    Canvas control() {
        return canvas;
    }

    private int rowHeight() {
        return Controls.lineHeight(canvas) + GAP;
    }

    private String tip(int y) {
        int index = y / rowHeight();
        return index >= 0 && index < rows.size()
                ? rows.get(index).sentence() + ". " + rows.get(index).reason()
                : "";
    }

    private void paint(GC gc) {
        int answers = rows.stream()
                        .mapToInt(row -> gc.textExtent(answer(row)).x)
                        .max()
                        .orElse(0)
                + GAP;
        int names = Math.min(
                canvas.getClientArea().width / 2,
                GAP + rows.stream().mapToInt(row -> bold(gc, row.title())).max().orElse(0));
        for (int i = 0; i < rows.size(); i++) {
            paint(gc, rows.get(i), i, names, answers);
        }
    }

    private static String answer(CauseRow row) {
        return row.percent() + "  " + row.word();
    }

    private static int bold(GC gc, String text) {
        Font plain = gc.getFont();
        gc.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        int width = gc.textExtent(text).x;
        gc.setFont(plain);
        return width;
    }

    private void paint(GC gc, CauseRow row, int index, int names, int answers) {
        int height = rowHeight();
        int y = index * height;
        int room = Math.max(0, canvas.getClientArea().width - names - answers - GAP);
        Font plain = gc.getFont();
        if (index == 0) {
            gc.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        }
        gc.setForeground(canvas.getForeground());
        gc.drawText(Shortened.to(gc, row.title(), names - GAP), 0, y + GAP / 2, true);
        gc.setFont(plain);
        gc.setBackground(ThemeColours.between(canvas, 0.10));
        gc.fillRectangle(names, y + GAP / 2 + 2, room, height - GAP - 4);
        gc.setBackground(ThemeColours.of(row.tone(), canvas));
        gc.fillRectangle(names, y + GAP / 2 + 2, Math.max(2, (int) Math.round(room * row.share())), height - GAP - 4);
        gc.setForeground(row.tone() == Tone.QUIET ? canvas.getForeground() : ThemeColours.of(row.tone(), canvas));
        gc.drawText(answer(row), names + room + GAP, y + GAP / 2, true);
    }
}
