// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.check;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.circuit.survey.CableRun;

/** Says "cannot tell" for something that survey or tables lack about the run. */
public final class MissingData {
    private MissingData() {}

    /** A value that was read but is in no table is named, or the reader would look for a missing reading. */
    public static void add(Findings findings, Check check, CableRun.Gap gap) {
        findings.on(check)
                .cannotTell(List.of(gap.path()))
                .variant(gap.what().isEmpty() ? "" : "notInTable")
                .argument("what", gap.what())
                .add();
    }
}
