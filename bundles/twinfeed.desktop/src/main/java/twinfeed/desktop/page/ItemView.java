// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.page;

import twinfeed.desktop.form.FieldLocation;
import twinfeed.desktop.form.Remarks;

/** One question on a page. */
interface ItemView {
    /** Shows the survey as it is now. */
    void refresh();

    /** Shows what there is to say about it; the answer is whether more or less room is needed than before. */
    boolean remark(Remarks remarks);

    /** Takes what was typed as the answer; the answer is whether that could be done. */
    boolean commit();

    /** Forgets what was typed since the last answer; the answer is whether there was anything. */
    boolean revert();

    /** Puts the cursor where a reading is typed; the answer is whether this question asks for it. */
    boolean focus(FieldLocation place);
}
