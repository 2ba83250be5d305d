// SPDX-License-Identifier: EPL-2.0
package twinfeed.assembly;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The list of components of a product in the form of CycloneDX 1.5, made from the tables of the notices. */
final class Components {
    private static final Pattern ROW =
            Pattern.compile("(?m)^\\|\\s*([\\w.-]+):([\\w.-]+)\\s*\\|\\s*([\\w.-]+)\\s*\\|\\s*([^|]+?)\\s*\\|$");
    /** Widgets of one system: the notices list those of all, a product has its own. */
    private static final Pattern SYSTEM = Pattern.compile("org\\.eclipse\\.swt\\.(gtk|win32|cocoa)\\..*");

    private Components() {}

    private record Component(String group, String name, String version, String licence) {
        String purl() {
            return "pkg:maven/" + group + "/" + name + "@" + version;
        }

        String json() {
            return """
                    {
                      "type": "library",
                      "bom-ref": "%s",
                      "group": "%s",
                      "name": "%s",
                      "version": "%s",
                      "scope": "required",
                      "licenses": [ { "expression": "%s" } ],
                      "purl": "%1$s"
                    }"""
                    .formatted(purl(), group, name, version, licence)
                    .indent(4)
                    .stripTrailing();
        }
    }

    /**
     * The list as JSON.
     *
     * @param notices file with the tables of libraries
     * @param plugins the bundles of the product
     * @param version of the program
     * @throws IOException if a file cannot be read, or the notices list nothing
     */
    static String list(Path notices, Path plugins, String version) throws IOException {
        Set<String> shipped = new TreeSet<>();
        for (Path jar : Folders.files(plugins)) {
            shipped.add(jar.getFileName().toString());
        }
        List<Component> components = new ArrayList<>();
        Set<String> seen = new TreeSet<>();
        Matcher row = ROW.matcher(Files.readString(notices));
        while (row.find()) {
            Component component = new Component(row.group(1), row.group(2), row.group(3), row.group(4));
            if (seen.add(component.purl())
                    && (!SYSTEM.matcher(component.name()).matches()
                            || shipped.stream().anyMatch(name -> name.startsWith(component.name() + "_")))) {
                components.add(component);
            }
        }
        if (components.isEmpty()) {
            throw new IOException("no library in the tables of " + notices);
        }
        return """
                {
                  "bomFormat": "CycloneDX",
                  "specVersion": "1.5",
                  "version": 1,
                  "metadata": {
                    "component": {
                      "type": "application",
                      "bom-ref": "twinfeed",
                      "name": "Twinfeed",
                      "version": "%s",
                      "licenses": [ { "license": { "id": "EPL-2.0" } } ]
                    }
                  },
                  "components": [
                %s
                  ]
                }
                """
                .formatted(version, components.stream().map(Component::json).collect(Collectors.joining(",\n")));
    }
}
