// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import twinfeed.usecase.OutputPaths;

/**
 * Where the pages after the work are written to. All of it appears, or nothing.
 *
 * @param record the record with the data for a certificate
 * @param customer the page for the customer
 */
public record CompletionPaths(OutputPaths record, OutputPaths customer) {
    /**
     * Refuses places that no page may take.
     *
     * @throws twinfeed.model.io.InputException if one is an input, no regular file, write-protected, or ends otherwise than its kind
     */
    public void check() {
        record.check();
        customer.check();
    }
}
