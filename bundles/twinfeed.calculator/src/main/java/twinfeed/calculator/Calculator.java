// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

/**
 * A plug-in that answers checks about one subject. Found as an OSGi service of this type and, on a plain class path, through
 * {@code META-INF/services}.
 *
 * <p>An implementation is stateless and thread-safe. It never throws for bad data: what cannot be answered is a finding
 * "cannot tell" that names the reading. Should it throw all the same, the runner turns that into a finding that names it.
 */
public interface Calculator {
    /** Declares what this calculator is called, the readings that it needs, the quantities that it provides and consumes and the work that it offers; always equal. */
    CalculatorDescriptor descriptor();

    /**
     * Maps the survey to what this calculator works on, once for all candidates.
     *
     * @param context the survey with its rule set, conditions and parameters
     * @return an assessor for the candidates of this survey
     */
    Assessor prepare(Context context);
}
