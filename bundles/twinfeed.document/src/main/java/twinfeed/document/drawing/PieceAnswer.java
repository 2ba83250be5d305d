// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

/**
 * What was found about a piece: the finding that bears hardest on it.
 *
 * @param mark the answer
 * @param check title of the check
 * @param margin its margin; empty without one
 * @param binding whether it decides
 */
public record PieceAnswer(Mark mark, String check, String margin, boolean binding) {}
