// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

/**
 * One place in which two quotes differ.
 *
 * @param kind {@code added}, {@code removed} or {@code changed}, seen from the earlier one
 * @param option name of the option; empty for the head and the words
 * @param section key of the section; empty outside sections
 * @param code code of the line, or name of a list of words; empty for option and head
 * @param field the value that differs; empty where a whole line, option or sentence was added or removed
 * @param before in the earlier one; empty if it is not there
 * @param after in the later one; empty if it is not there
 */
public record QuoteDifference(
        String kind, String option, String section, String code, String field, String before, String after) {}
