// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import java.nio.file.Path;
import java.util.List;
import org.eclipse.e4.ui.di.AboutToShow;
import org.eclipse.e4.ui.model.application.ui.menu.MDirectMenuItem;
import org.eclipse.e4.ui.model.application.ui.menu.MMenuElement;
import org.eclipse.e4.ui.model.application.ui.menu.MMenuFactory;
import twinfeed.desktop.Settings;
import twinfeed.desktop.text.Words;

/** The recent jobs as a menu. */
public final class RecentMenu {
    @AboutToShow
    void fill(List<MMenuElement> items, Settings settings, Words words) {
        int number = 0;
        for (Path file : settings.recent()) {
            number++;
            MDirectMenuItem item = MMenuFactory.INSTANCE.createDirectMenuItem();
            item.setLabel("&" + number + "  " + file.getFileName() + "  \u2013  " + file.getParent());
            item.setContributionURI("bundleclass://twinfeed.desktop/" + OpenRecentHandler.class.getName());
            item.getTransientData().put(OpenRecentHandler.FILE, file);
            items.add(item);
        }
        if (items.isEmpty()) {
            MDirectMenuItem none = MMenuFactory.INSTANCE.createDirectMenuItem();
            none.setLabel(words.get("start.recent.none"));
            none.setEnabled(false);
            items.add(none);
        }
    }
}
