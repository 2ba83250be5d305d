// SPDX-License-Identifier: EPL-2.0
/** The sheet of checks: heaters by checks, and each answer in figures. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.checks;
