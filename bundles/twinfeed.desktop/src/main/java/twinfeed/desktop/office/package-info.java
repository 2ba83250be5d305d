// SPDX-License-Identifier: EPL-2.0
/** The office's list of jobs and quotes: where each stands, what is missing, what comes next. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.office;
