// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.QuoteState;

/**
 * A customer's decision that was recorded by mistake and taken back.
 *
 * @param was what had been recorded: accepted or declined
 * @param decidedOn the day of that decision
 * @param chosen name of the option that was recorded as accepted; null if it was declined
 * @param on the day of the correction
 * @param reason why it was taken back
 */
public record QuoteCorrection(
        QuoteState was, LocalDate decidedOn, @Nullable String chosen, LocalDate on, String reason) {}
