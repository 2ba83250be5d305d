// SPDX-License-Identifier: EPL-2.0
/**
 * One open job: its survey, the edits, the results that follow; no SWT.
 *
 * <p>More than twenty classes: survey, fault search, quote, what is changed in it by hand and the readings after the work share the job's copy
 * and its queues of work, which nobody else may touch.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.session;
