// SPDX-License-Identifier: EPL-2.0
/** What findings, options, quote and drawing show, as plain rows; no SWT. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.view;
