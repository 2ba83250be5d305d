// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import twinfeed.engineering.pipe.PipeSegment;

/**
 * A pipe between the gauge and the unit, or of a tap's branch.
 *
 * @param name its name in the survey
 * @param pipe its hydraulics
 * @param origin where its figures come from
 */
public record NamedPipe(String name, PipeSegment pipe, PipeOrigin origin) {
    /** A pipe that is in no survey. */
    public NamedPipe(String name, PipeSegment pipe) {
        this(name, pipe, PipeOrigin.NONE);
    }
}
