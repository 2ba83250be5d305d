// SPDX-License-Identifier: EPL-2.0
/** Lists as rows of text: price lists, lists of dwellings, tables of data. */
@org.jspecify.annotations.NullMarked
package twinfeed.model.rows;
