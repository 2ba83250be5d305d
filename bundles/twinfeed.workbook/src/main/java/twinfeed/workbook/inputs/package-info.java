// SPDX-License-Identifier: EPL-2.0
/** The block of inputs: each reading, heater's datum and tabulated figure in one cell, to which all workings refer. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.inputs;
