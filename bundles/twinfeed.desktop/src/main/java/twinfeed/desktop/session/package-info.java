// SPDX-License-Identifier: EPL-2.0
/**
 * One open job: how it begins, its survey, the edits, the results that follow; no SWT.
 *
 * <p>More than twenty classes: a job's edits, results, rescue and issuing share what nobody else may touch, and are hidden from the widgets.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.session;
