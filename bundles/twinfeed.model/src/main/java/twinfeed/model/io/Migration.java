// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import org.w3c.dom.Document;

/** A step from one form of the files to the next, made on the document before the model sees it. */
public interface Migration {
    /** The form that it reads; it leaves the form of the next higher number. */
    int from();

    /**
     * Turns a document into the next form. The names in its namespaces and its version mark are moved on by the caller.
     *
     * @param document a document without DTD, entities and references to other documents; changed in place
     */
    void migrate(Document document);
}
