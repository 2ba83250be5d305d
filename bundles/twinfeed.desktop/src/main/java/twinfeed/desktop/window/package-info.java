// SPDX-License-Identifier: EPL-2.0
/** What happens at the start, and which jobs are open. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.window;
