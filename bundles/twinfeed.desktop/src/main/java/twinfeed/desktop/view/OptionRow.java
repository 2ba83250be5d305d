// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import twinfeed.document.drawing.Mark;

/**
 * One option side by side with the others.
 *
 * @param key what tells it from the others
 * @param title what a customer reads
 * @param verdict whether it suits
 * @param binding the check that decides, with its margin
 * @param work the work that makes it suit; empty if none is needed
 * @param price total with tax, as text; empty if it is not offered
 * @param noPrice that the quote does not offer it, in words; empty if it does, or there is no quote
 */
public record OptionRow(
        String key, String title, Mark verdict, String binding, String work, String price, String noPrice) {}
