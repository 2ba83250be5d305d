// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

/**
 * A row that could not be used.
 *
 * @param row its number in the list, from 1
 * @param dwelling what the dwelling is called; may be empty
 * @param reason what is wrong and what would be right
 */
public record Refused(int row, String dwelling, String reason) {}
