// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.repair;

import org.joda.money.Money;

/**
 * A new unit as it would be quoted.
 *
 * @param heater its id
 * @param title what a customer reads
 * @param price price with all work, without tax
 * @param enquiry whether something in it can only be had on enquiry
 */
public record ReplacementOffer(String heater, String title, Money price, boolean enquiry) {}
