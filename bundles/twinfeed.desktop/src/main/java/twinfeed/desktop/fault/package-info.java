// SPDX-License-Identifier: EPL-2.0
/** The page of the fault-finding: questions, safe isolation, and what follows from the answers. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.fault;
