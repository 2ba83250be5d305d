// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

/** Where a reading of a dwelling is from. */
enum ReadingOrigin {
    /** The list says it. */
    OWN("own"),
    /** The list does not say it, the template does. */
    TEMPLATE("template"),
    /** Neither says it, or the list takes it away. */
    MISSING("missing");

    private final String key;

    ReadingOrigin(String key) {
        this.key = key;
    }

    /** Key of its words. */
    String key() {
        return key;
    }
}
