// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.help;

import java.util.List;

/**
 * What there is to say about one check.
 *
 * @param title the check's name
 * @param sections what it asks, what it needs, its formula, its source, what to do
 */
public record HelpPage(String title, List<Section> sections) {
    /**
     * A part of a page.
     *
     * @param heading its heading
     * @param lines its lines
     */
    public record Section(String heading, List<String> lines) {
        public Section {
            lines = List.copyOf(lines);
        }
    }

    public HelpPage {
        sections = List.copyOf(sections);
    }

    /** All of it as plain text. */
    public String text() {
        StringBuilder text = new StringBuilder(title).append("\n\n");
        for (Section section : sections) {
            text.append(section.heading()).append('\n');
            section.lines().forEach(line -> text.append(line).append('\n'));
            text.append('\n');
        }
        return text.toString();
    }
}
