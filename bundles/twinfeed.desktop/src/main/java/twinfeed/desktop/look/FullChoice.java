// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Text;

/** An answer that does not fit into its field is read whole under the pointer, before what its tooltip says besides. */
final class FullChoice {
    private FullChoice() {}

    static void of(CCombo choice) {
        choice.addListener(SWT.MouseEnter, event -> Stream.of(choice.getChildren())
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .forEach(text -> tell(choice, text)));
    }

    private static void tell(CCombo choice, Text text) {
        GC gc = new GC(text);
        boolean cut = gc.textExtent(text.getText()).x > text.getClientArea().width;
        gc.dispose();
        String other = choice.getToolTipText() == null ? "" : choice.getToolTipText();
        text.setToolTipText(cut ? (text.getText() + "\n" + other).strip() : other);
    }
}
