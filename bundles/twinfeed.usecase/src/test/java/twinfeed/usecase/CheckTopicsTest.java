// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.flow.FlowCalculator;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Supply;

/** A quote that was issued before findings named their topic is printed as it was then. */
class CheckTopicsTest {
    private static final AssessmentFactory MAKE = AssessmentFactory.eINSTANCE;

    private static Finding finding(String key) {
        Finding finding = MAKE.createFinding();
        finding.setKey(key);
        return finding;
    }

    @Test
    void findingsOfOlderRecordsGetTheTopicOfTheirCheck() {
        Finding winter = finding("flow.winter");
        Finding activation = finding("flow.activation");
        Finding stranger = finding("nobody.knows");
        Finding named = finding("flow.byMonth");
        named.setTopic(CheckTopic.SCALDING);
        OptionAssessment option = MAKE.createOptionAssessment();
        option.getFindings().addAll(List.of(winter, stranger, named));
        option.getAfterWork().add(activation);
        Assessment record = MAKE.createAssessment();
        record.getOptions().add(option);
        new CheckTopics(List.of(new FlowCalculator())).complete(record);
        assertEquals(CheckTopic.WINTER_FLOW, winter.getTopic());
        assertEquals(Supply.WATER, winter.getSupply());
        assertFalse(activation.isSetTopic());
        assertEquals(Supply.WATER, activation.getSupply());
        assertFalse(stranger.isSetTopic() || stranger.isSetSupply());
        assertEquals(CheckTopic.SCALDING, named.getTopic());
    }

    private static Finding under(String key, String condition) {
        Finding finding = finding(key);
        finding.setCondition(condition);
        return finding;
    }

    /** Neither of both stands in a file: the readings are declared, and the piece is what the condition begins with. */
    @Test
    void findingsOfAFileGetTheirReadingsAndTheirPieceAgain() {
        FlowCalculator flow = new FlowCalculator();
        Finding winter = under("flow.winter", "rising main, July, kitchen tap open");
        Finding whole = under("flow.byMonth", "rising main, upper");
        Finding other = under("nobody.knows", "riser");
        Finding nowhere = under("nobody.knows", "rising mains");
        Finding named = under("nobody.knows", "riser");
        named.setSubject("loft");
        Finding asked = under("flow.intake", "riser");
        asked.getNeeds().add("survey.water");
        Finding plain = finding("flow.outlet");
        OptionAssessment option = MAKE.createOptionAssessment();
        option.getFindings().addAll(List.of(winter, whole, other, nowhere, named, asked));
        option.getAfterWork().add(plain);
        Assessment record = MAKE.createAssessment();
        record.getOptions().add(option);
        new CheckTopics(List.of(flow)).place(record, Set.of("rising main", "rising main, upper", "riser"));
        List<String> needs = flow.descriptor().checks().stream()
                .filter(check -> check.key().equals("flow.winter"))
                .findFirst()
                .orElseThrow()
                .needs();
        assertFalse(needs.isEmpty());
        assertEquals(needs, winter.getNeeds());
        assertEquals("rising main", winter.getSubject());
        assertEquals("rising main, upper", whole.getSubject(), "the longest name that fits");
        assertEquals("riser", other.getSubject());
        assertEquals(List.of(), other.getNeeds());
        assertNull(nowhere.getSubject());
        assertEquals("loft", named.getSubject());
        assertEquals(List.of("survey.water"), asked.getNeeds());
        assertNull(asked.getSubject(), "it was not read from a file");
        assertNull(plain.getSubject());
    }
}
