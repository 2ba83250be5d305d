// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.formula;

import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.network.SupplyTest;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.units.Kind;
import twinfeed.units.text.Texts;

/** What the formulas share. */
final class FormulaTerms {
    /** More than any supply or switch of a house, Pa. */
    static final double MOST_PA = 50e5;

    static final Parameter TEMPERATURE = Parameter.optional("temperature", Kind.TEMPERATURE, 10, 0, 100);

    private FormulaTerms() {}

    /** Why a supply test tells nothing of the supply. */
    static Answer refused(SupplyTest test) {
        FailureReason reason = test == SupplyTest.FLOW_NOT_POSITIVE
                ? FailureReason.FLOW_NOT_POSITIVE
                : FailureReason.RUNNING_NOT_BELOW_STATIC;
        return Answer.none(Texts.key(reason), Working.none());
    }
}
