// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.completion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.SampleHouse;
import twinfeed.document.DocumentTexts;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.workbook.text.WorkbookTexts;

/** In which band the loop that is measured at the end is accepted. */
class AcceptanceBandsTest {
    private static AcceptanceBand loop(@Nullable Double value, double limit) {
        Finding finding = AssessmentFactory.eINSTANCE.createFinding();
        finding.setTopic(CheckTopic.LOOP_IMPEDANCE);
        finding.setValue(value);
        finding.setLimit(limit);
        OptionAssessment option = AssessmentFactory.eINSTANCE.createOptionAssessment();
        option.getFindings().add(finding);
        DocumentTexts words = new DocumentTexts(Locale.ENGLISH, WorkbookTexts.SHEETS);
        return new AcceptanceBands(words, SampleHouse.fed("240 V"))
                .electrical(option).stream()
                        .filter(band -> band.key().equals("loop"))
                        .findFirst()
                        .orElseThrow();
    }

    /** 80 % of the limit for warm conductors (guidance of the trade). */
    @Test
    void theBreakerHasItsLimit() {
        assertEquals(0.8 * 1.09, loop(0.6, 1.09).high());
    }

    /** 50 V over 30 mA are 1,667 ohm (BS 7671 411.5.3, from memory), which a lost earth does not exceed either. */
    @Test
    void whatTheRcdDisconnectsHasToBeExplained() {
        AcceptanceBand band = loop(0.95, 50 / 0.03);
        assertEquals(0.95 + 0.25, band.high());
        assertEquals(
                "0.95 Ω from Ze and the conductors, and 0.25 Ω for instruments and contacts; the RCD disconnects, the breaker or fuse"
                        + " alone would not",
                band.basis());
        assertNull(loop(null, 50 / 0.03).high());
    }
}
