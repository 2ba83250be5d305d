// SPDX-License-Identifier: EPL-2.0
package twinfeed.fuzz;

/**
 * An input that the program does not take as it should.
 *
 * @param reason what happened, in one line
 * @param where the place in the program, for telling findings apart; the reason again where there is none
 * @param input the file's content
 */
record Finding(String reason, String where, byte[] input) {}
