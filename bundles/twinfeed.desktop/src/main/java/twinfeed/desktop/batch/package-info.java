// SPDX-License-Identifier: EPL-2.0
/** Lists of dwellings at the window: judged out of the way, with progress, and shown most urgent first. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.batch;
