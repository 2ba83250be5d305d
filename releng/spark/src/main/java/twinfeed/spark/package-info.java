// SPDX-License-Identifier: EPL-2.0
/** Judges lists of dwellings on Apache Spark, with the lines that the program itself writes. */
@org.jspecify.annotations.NullMarked
package twinfeed.spark;
