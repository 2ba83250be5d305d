// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.function.Supplier;
import twinfeed.model.survey.Survey;

/**
 * A house of a kind, with which a job may begin: what such houses usually have, to be measured where this one differs.
 *
 * @param title what it is called
 * @param help what is in it
 * @param survey makes a survey with it; throws {@link twinfeed.model.io.InputException} if its file cannot be used
 */
public record JobTemplate(String title, String help, Supplier<Survey> survey) {}
