// SPDX-License-Identifier: EPL-2.0
/**
 * What a quote and a job sheet say, whatever they are printed on: content and words. Workbook and PDF lay out what stands here, so that
 * both say the same in the same words.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.document;
