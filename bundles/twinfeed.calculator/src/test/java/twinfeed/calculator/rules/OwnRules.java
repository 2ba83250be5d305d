// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** A user's own rule set for tests, which begins as a copy of the standard one. */
public final class OwnRules {
    /** The id under which it is found. */
    public static final String ID = "north-isles-2030";

    private OwnRules() {}

    /** Copies the standard rule set into a folder and has it looked for there; the answer is the folder of its files. */
    public static Path copyInto(Path folder) throws IOException {
        Path own = Files.createDirectories(folder.resolve(ID));
        List<String> names = new ArrayList<>(RuleSet.TABLES);
        names.add("numbers");
        for (String name : names) {
            try (InputStream stream = RuleSets.class.getResourceAsStream(RuleSets.DEFAULT + "/" + name + ".csv")) {
                Files.copy(Objects.requireNonNull(stream), own.resolve(name + ".csv"));
            }
        }
        System.setProperty(RuleSets.FOLDER, folder.toString());
        return own;
    }

    /** From now on only the program's own rule sets are found. */
    public static void forget() {
        System.clearProperty(RuleSets.FOLDER);
    }
}
