// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Rule sets that come with the program and those of one folder of the user; each is read when it is first asked for. */
final class RuleShelf {
    private final List<String> own;
    private final Map<String, Path> foreign = new LinkedHashMap<>();
    private final Map<String, RuleSet> read = new ConcurrentHashMap<>();

    RuleShelf(List<String> own, @Nullable Path folder) {
        this.own = List.copyOf(own);
        if (folder != null) {
            try (Stream<Path> inside = Files.list(folder)) {
                inside.filter(Files::isDirectory).sorted().forEach(this::add);
            } catch (IOException unreadable) {
                throw RuleRefusal.of(unreadable, "folder.unreadable", folder);
            }
        }
    }

    /** A second rule set of an id that is there would make it unclear which values were used. */
    private void add(Path folder) {
        String id = String.valueOf(folder.getFileName());
        if (own.contains(id)) {
            throw RuleRefusal.of("folder.own", folder, id);
        }
        foreign.put(id, folder);
    }

    List<String> ids() {
        List<String> all = new ArrayList<>(own);
        all.addAll(foreign.keySet());
        return List.copyOf(all);
    }

    Optional<RuleSet> find(String id) {
        RuleSet known = read.get(id);
        if (known != null) {
            return Optional.of(known);
        }
        return own.contains(id) || foreign.containsKey(id)
                ? Optional.of(read.computeIfAbsent(id, this::load))
                : Optional.empty();
    }

    private RuleSet load(String id) {
        Map<String, Table> tables = new LinkedHashMap<>();
        RuleSet.TABLES.forEach(name -> tables.put(name, table(id, name)));
        RuleSet result = new RuleSet(id, table(id, "numbers"), tables);
        if (foreign.containsKey(id)) {
            checkComplete(result);
        }
        return result;
    }

    /** What the program's own rule set states, another has to state too: no value is ever borrowed from another standard. */
    private static void checkComplete(RuleSet result) {
        List<String> missing = new ArrayList<>(RuleSets.standard().keys());
        missing.removeAll(result.keys());
        if (!missing.isEmpty()) {
            throw RuleRefusal.of("set.incomplete", result.id(), String.join(", ", missing));
        }
    }

    private Table table(String id, String name) {
        Path folder = foreign.get(id);
        return folder == null
                ? RuleSets.built(name, id + "/" + name + ".csv")
                : RuleSets.foreign(folder.resolve(name + ".csv"));
    }
}
