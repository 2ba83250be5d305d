// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import twinfeed.engineering.pipe.PipeSegment;

/**
 * A pipe between the gauge and the unit, or of a tap's branch.
 *
 * @param name its name in the survey
 * @param pipe its hydraulics
 */
public record NamedPipe(String name, PipeSegment pipe) {}
