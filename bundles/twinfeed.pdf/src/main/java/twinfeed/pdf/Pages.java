// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Sets a document ever smaller until it fits. */
final class Pages {
    /** The front page and one for the small print. */
    private static final int USUAL = 2;

    /** Sets the document in a size. */
    interface Setting {
        Typesetter.Set in(double sizePoints) throws IOException;
    }

    private Pages() {}

    /** The first size in which the document fits so many pages; where none does, the first size, for then there is no reason to read small. */
    static Typesetter.Set fitting(int pages, List<Double> sizesPoints, Setting setting) throws IOException {
        Typesetter.Set first = setting.in(sizesPoints.get(0));
        Typesetter.Set set = first;
        for (int at = 1; set.pages() > pages && at < sizesPoints.size(); at++) {
            set = setting.in(sizesPoints.get(at));
        }
        return set.pages() <= pages ? set : first;
    }

    /**
     * The first size in which its front fits the first page and what has to be read fits two; otherwise the first in which the front fits;
     * otherwise the first size.
     *
     * @param whole sets the whole document
     * @param text sets what has to be read, without the drawings behind it, for which nothing is read smaller
     * @param front sets what has to stand on the first page
     */
    static Typesetter.Set fitting(List<Double> sizesPoints, Setting whole, Setting text, Setting front)
            throws IOException {
        List<Typesetter.Set> fitting = new ArrayList<>();
        for (double size : sizesPoints) {
            if (front.in(size).pages() == 1) {
                Typesetter.Set set = whole.in(size);
                if (set.pages() <= USUAL || text.in(size).pages() <= USUAL) {
                    return set;
                }
                fitting.add(set);
            }
        }
        return fitting.isEmpty() ? whole.in(sizesPoints.get(0)) : fitting.get(0);
    }
}
