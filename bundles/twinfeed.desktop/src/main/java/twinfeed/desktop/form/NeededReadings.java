// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import twinfeed.desktop.form.Page.Item;
import twinfeed.desktop.form.Page.Section;
import twinfeed.desktop.form.Page.Several;
import twinfeed.model.check.ModelPath;

/** The readings that checks wait for, in the order in which the pages ask them. */
public final class NeededReadings {
    private final List<String> order = new ArrayList<>();
    private final List<FieldLocation> places = new ArrayList<>();
    private final Set<String> needed = new HashSet<>();
    private final Set<String> lackingObjects = new HashSet<>();
    private final Remarks remarks;

    private NeededReadings(Remarks remarks) {
        this.remarks = remarks;
    }

    /** What the remarks on a survey say is wanted. */
    public static NeededReadings of(List<Page> pages, EObject survey, Remarks remarks) {
        NeededReadings readings = new NeededReadings(remarks);
        for (Page page : pages) {
            // No check of the survey waits for what is measured after the work.
            if (page.owner().isInstance(survey)) {
                page.sections().forEach(section -> readings.section(section, survey));
            }
        }
        return readings;
    }

    /** Of an object that is not there the first field that would make it is enough: the rest is wanted when it is there. */
    private void section(Section section, EObject survey) {
        boolean lacks = !section.folded()
                && wanted(remarks.on(survey, section))
                && lackingObjects.add(remarks.lacking(survey, section));
        boolean first = true;
        for (Item item : section.items()) {
            add(item, survey, first && lacks);
            first = false;
        }
    }

    private void add(Item item, EObject root, boolean lacking) {
        String key = ModelPath.of(root) + "." + item.path().text();
        order.add(key);
        places.add(new FieldLocation(root, item.path().text()));
        if (lacking || wanted(remarks.on(root, item.path()))) {
            needed.add(key);
        }
        if (item instanceof Several several && several.path().last() instanceof EReference) {
            several.path().elements(root).forEach(element -> several.items()
                    .forEach(each -> add(each, element, false)));
        }
    }

    private static boolean wanted(List<Remark> all) {
        return all.stream().anyMatch(each -> each.level() == Remark.Level.WANTED);
    }

    /** How many there are. */
    public int size() {
        return needed.size();
    }

    /**
     * The next one, after the last one the first again; empty if no check waits for any.
     *
     * @param after path in the model of the reading behind which to look; empty for all
     */
    public Optional<FieldLocation> next(String after) {
        int from = order.indexOf(after) + 1;
        for (int i = 0; i < order.size(); i++) {
            int index = (from + i) % order.size();
            if (needed.contains(order.get(index))) {
                return Optional.of(places.get(index));
            }
        }
        return Optional.empty();
    }

    /**
     * The next one on a page or behind it, after the last page on the first again; empty if no check waits for any.
     *
     * @param page the page to begin with
     */
    public Optional<FieldLocation> nextFrom(Page page, EObject survey) {
        String first = ModelPath.of(survey) + "."
                + page.sections().get(0).items().get(0).path().text();
        int index = order.indexOf(first);
        return next(index <= 0 ? "" : order.get(index - 1));
    }
}
