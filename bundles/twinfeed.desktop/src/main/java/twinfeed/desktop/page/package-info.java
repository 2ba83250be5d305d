// SPDX-License-Identifier: EPL-2.0
/** The survey's pages as widgets: fields, lists, messages beside them. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.page;
