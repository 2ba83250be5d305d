// SPDX-License-Identifier: EPL-2.0
/** What is on the disk after a program was killed, raced or left without room. */
@org.jspecify.annotations.NullMarked
package twinfeed.cli.crash;
