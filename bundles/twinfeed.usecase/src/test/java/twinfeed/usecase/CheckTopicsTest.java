// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
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
}
