// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.guide;

import java.util.Arrays;
import java.util.List;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.usecase.refusal.Refusals;

/** A kind of file that the program reads. */
public enum FileKind {
    /** A job, *.job. */
    JOB("job", true),
    /** A heater catalogue, *.catalogue. */
    CATALOGUE("catalogue", true),
    /** A price book, *.csv or *.xlsx. */
    PRICE_BOOK("price-book", true),
    /** A list of dwellings, *.csv or *.xlsx. */
    DWELLINGS("dwellings", true),
    /** A firm: its folder with name, prices, heaters and texts. */
    FIRM("firm", true),
    /** A firm's own wording of the standing texts. */
    TEXTS("texts", false),
    /** An issued quote, *.quote. */
    QUOTE("quote", false);

    private final String key;
    private final boolean begun;

    FileKind(String key, boolean begun) {
        this.key = key;
        this.begun = begun;
    }

    /** Its name on the command line. */
    public String key() {
        return key;
    }

    /** The names of all kinds. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(FileKind::key).toList();
    }

    /** The names of the kinds of which a first file can be written. */
    public static List<String> begunKeys() {
        return Arrays.stream(values())
                .filter(kind -> kind.begun)
                .map(FileKind::key)
                .toList();
    }

    /**
     * The kind of a name.
     *
     * @param known the names that are right here
     * @throws InputException if it is none of them; the nearest is named
     */
    public static FileKind of(String name, List<String> known) {
        return Arrays.stream(values())
                .filter(kind -> kind.key.equals(name) && known.contains(name))
                .findFirst()
                .orElseThrow(() -> new InputException(new InputProblem(
                        "",
                        0,
                        Refusals.text("kind.element"),
                        name,
                        Refusals.wrong("kind"),
                        Refusals.oneOf("kind", name, known))));
    }
}
