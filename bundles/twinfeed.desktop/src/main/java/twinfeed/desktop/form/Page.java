// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.List;
import java.util.Objects;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import twinfeed.model.survey.Survey;

/**
 * One page of the survey.
 *
 * @param key key of its texts, {@code page.KEY}
 * @param owner class of the object whose readings it asks for: the survey, or the job that the survey belongs to
 * @param sections what it asks, in the order in which a person sees it in the house
 */
public record Page(String key, EClass owner, List<Section> sections) {
    public Page {
        sections = List.copyOf(sections);
    }

    /** The object whose readings it asks for. */
    public EObject root(Survey survey) {
        return owner.isInstance(survey)
                ? survey
                : Objects.requireNonNull(survey.eContainer(), "a survey at the window belongs to a job");
    }

    /** Whether a reading is asked here. */
    public boolean asks(EObject root, FieldLocation place) {
        return sections.stream().anyMatch(section -> section.asks(root, place));
    }

    /**
     * Questions that belong together.
     *
     * @param key key of its heading, {@code section.KEY}
     * @param folded whether it is folded away until somebody wants it
     * @param items the questions
     */
    public record Section(String key, boolean folded, List<Item> items) {
        private static final java.util.Set<String> UNDER_COVER = java.util.Set.of("elements", "deadTests");

        /** Whether its readings are taken under the cover, and so wait for the safe isolation. */
        public boolean underCover() {
            return UNDER_COVER.contains(key);
        }

        public Section {
            items = List.copyOf(items);
        }

        /** Whether a reading is asked here. */
        public boolean asks(EObject root, FieldLocation place) {
            return items.stream().anyMatch(item -> item.asks(root, place));
        }
    }

    /** A question. */
    public sealed interface Item permits Field, Several, Offered {
        /** The way to its answer. */
        ReadingPath path();

        /** Whether this question, asked of an object, is the one for a reading. */
        default boolean asks(EObject root, FieldLocation place) {
            return root == place.root() && path().text().equals(place.path());
        }
    }

    /**
     * A question with one answer.
     *
     * @param path the way to the answer
     * @param form how it is asked
     */
    public record Field(ReadingPath path, FieldForm form) implements Item {}

    /**
     * A question with several answers of the same form, for example the pieces of a pipe run.
     *
     * @param path the way to the list
     * @param columns paths from an element to what tells it from the others
     * @param items what is asked of each
     * @param grows whether elements are added and removed here, and not elsewhere
     */
    public record Several(ReadingPath path, List<ReadingPath> columns, List<Item> items, boolean grows)
            implements Item {
        public Several {
            columns = List.copyOf(columns);
            items = List.copyOf(items);
        }

        @Override
        public boolean asks(EObject root, FieldLocation place) {
            boolean itself = root == place.root() && path.text().equals(place.path());
            return itself
                    || (place.row() && path.elements(root).contains(place.root()))
                    || path.elements(root).stream()
                            .anyMatch(element -> items.stream().anyMatch(each -> each.asks(element, place)));
        }
    }

    /**
     * A question whose answers are picked from what is on offer: the candidate heaters.
     *
     * @param path the way to the list of their ids
     */
    public record Offered(ReadingPath path) implements Item {}
}
