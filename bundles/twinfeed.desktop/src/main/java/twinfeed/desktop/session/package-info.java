// SPDX-License-Identifier: EPL-2.0
/** One open job: its survey, the edits, the results that follow; no SWT. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.session;
