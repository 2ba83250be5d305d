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
     * otherwise the first size. What has to be read is set first, for the drawings take as long as all else together.
     *
     * @param whole sets the whole document
     * @param text sets what has to be read, without the drawings behind it, for which nothing is read smaller
     * @param front sets what has to stand on the first page; it is only asked where nothing else tells: what fits one page has its front there,
     *     and a box to sign ends the front
     */
    static Typesetter.Set fitting(List<Double> sizesPoints, Setting whole, Setting text, Setting front)
            throws IOException {
        List<Typesetter.Set> read = new ArrayList<>();
        for (double size : sizesPoints) {
            Typesetter.Set set = text.in(size);
            if (set.pages() <= USUAL && frontFits(set, size, front)) {
                return whole.in(size);
            }
            read.add(set);
        }
        for (int at = 0; at < read.size(); at++) {
            if (frontFits(read.get(at), sizesPoints.get(at), front)) {
                return whole.in(sizesPoints.get(at));
            }
        }
        return whole.in(sizesPoints.get(0));
    }

    private static boolean frontFits(Typesetter.Set text, double size, Setting front) throws IOException {
        if (text.pages() == 1 || text.signedOn() == 1) {
            return true;
        }
        return text.signedOn() == 0 && front.in(size).pages() == 1;
    }
}
