// SPDX-License-Identifier: EPL-2.0
/** What the survey's pages ask, and how a reading is written and read; no SWT. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.form;
