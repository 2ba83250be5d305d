// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.io.IOException;
import java.util.List;

/** Sets a document ever smaller until it fits. */
final class Pages {
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
}
