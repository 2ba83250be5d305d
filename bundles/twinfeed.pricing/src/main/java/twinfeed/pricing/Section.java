// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

/** Sections of an option in the order in which they are printed. */
public enum Section {
    /** The heater. */
    UNIT("unit"),
    /** Material for the work that makes it suit, and other items. */
    REMEDIAL("remedial"),
    /** Labour, with the minimum visit charge. */
    LABOUR("labour"),
    /** Testing, certification, notification. */
    TESTING("testing"),
    /** Travel and disposal. */
    TRAVEL("travel"),
    /** Making good. */
    MAKING_GOOD("making-good"),
    /** Contingency. */
    CONTINGENCY("contingency"),
    /** Discount. */
    DISCOUNT("discount");

    private final String key;

    Section(String key) {
        this.key = key;
    }

    /** Its key in quotes and messages. */
    public String key() {
        return key;
    }

    /** Where the labour of an item in this section is printed. */
    Section ofLabour() {
        return this == UNIT || this == REMEDIAL ? LABOUR : this;
    }

    /** Whether doubt about routes and readings bears on it. */
    boolean doubtful() {
        return this == REMEDIAL || this == LABOUR || this == MAKING_GOOD;
    }

    static Section of(String key) {
        for (Section section : values()) {
            if (section.key.equals(key)) {
                return section;
            }
        }
        throw new IllegalArgumentException("no section " + key);
    }
}
