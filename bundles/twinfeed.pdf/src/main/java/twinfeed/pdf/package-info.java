// SPDX-License-Identifier: EPL-2.0
/**
 * Quotes and job sheets as PDF: tagged for screen readers (PDF/UA-1), typefaces embedded, deterministic to the byte. Laid out as XSL-FO
 * and set by Apache FOP, none of which is loaded before a PDF is asked for.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.pdf;
