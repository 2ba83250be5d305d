// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.help;

import java.util.ArrayList;
import java.util.List;
import twinfeed.desktop.help.HelpPage.Section;

/** The reference of a kind of file as a page of the window: its title, and a section for each part of the file. */
final class FilePages {
    private FilePages() {}

    /**
     * The page.
     *
     * @param lines the reference line by line: its title, then parts with a blank line before each; the first line of a part heads it
     */
    static HelpPage of(List<String> lines) {
        List<Section> sections = new ArrayList<>();
        List<String> part = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            if (line.isEmpty()) {
                add(part, sections);
                part.clear();
            } else {
                part.add(line);
            }
        }
        add(part, sections);
        return new HelpPage(lines.get(0), sections);
    }

    private static void add(List<String> part, List<Section> sections) {
        if (!part.isEmpty()) {
            sections.add(new Section(part.get(0), List.copyOf(part.subList(1, part.size()))));
        }
    }
}
