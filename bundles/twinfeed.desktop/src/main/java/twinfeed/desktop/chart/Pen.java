// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.chart;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Control;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.document.shape.Tone;

/**
 * How a curve is drawn: stroke, marker and colour together tell it from the others, so that colour is not needed.
 *
 * @param tone its colour
 * @param stroke style of the line
 * @param corners corners of its marker; 0 is a disc
 */
public record Pen(Tone tone, int stroke, int corners) {
    private static final Pen[] ALL = {
        new Pen(Tone.WATER, SWT.LINE_SOLID, 0),
        new Pen(Tone.POWER, SWT.LINE_DASH, 4),
        new Pen(Tone.BAD, SWT.LINE_DASHDOT, 3),
        new Pen(Tone.GOOD, SWT.LINE_DOT, 5)
    };

    /** The pen of the curve with a number. */
    public static Pen of(int number) {
        return ALL[number % ALL.length];
    }

    /** Its stroke as lengths of lines and gaps in pixels; empty for a whole line. */
    public String dashes() {
        return switch (stroke) {
            case SWT.LINE_DASH -> "10 6";
            case SWT.LINE_DASHDOT -> "10 5 2 5";
            case SWT.LINE_DOT -> "2 4";
            default -> "";
        };
    }

    /** Takes the pen into the hand. */
    void take(GC gc, Control ground, int width) {
        gc.setForeground(ThemeColours.of(tone, ground));
        gc.setBackground(ThemeColours.of(tone, ground));
        gc.setLineWidth(width);
        gc.setLineStyle(stroke);
    }

    /** Draws its marker. */
    void mark(GC gc, int x, int y, int radius) {
        if (corners == 0) {
            gc.fillOval(x - radius, y - radius, 2 * radius, 2 * radius);
            return;
        }
        int[] points = new int[2 * corners];
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners - Math.PI / 2;
            points[2 * i] = x + (int) Math.round(1.3 * radius * Math.cos(angle));
            points[2 * i + 1] = y + (int) Math.round(1.3 * radius * Math.sin(angle));
        }
        gc.fillPolygon(points);
    }
}
