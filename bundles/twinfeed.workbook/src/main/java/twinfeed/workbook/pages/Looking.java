// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import twinfeed.workbook.book.Look;

/** The looks that several sheets share. */
final class Looking {
    static final Look BODY = Look.BODY;
    static final Look BOLD = BODY.ink(Look.Ink.BOLD);
    static final Look MUTED = BODY.ink(Look.Ink.MUTED);
    static final Look SMALL = BODY.ink(Look.Ink.SMALL);
    static final Look TITLE = BODY.ink(Look.Ink.TITLE).single();
    static final Look HEADING = BODY.ink(Look.Ink.HEADING);
    static final Look HEAD = BODY.ink(Look.Ink.HEAD).paper(Look.Paper.HEAD);
    static final Look BAND = HEADING.paper(Look.Paper.SOFT).single();
    static final Look LINE = BODY.edge(Look.Edge.BELOW);
    static final Look LINE_MUTED = MUTED.edge(Look.Edge.BELOW);
    static final Look SUM = BOLD.edge(Look.Edge.ABOVE);

    private Looking() {}
}
