// SPDX-License-Identifier: EPL-2.0
/** Seeded mutational fuzzing of everything that the program reads from files: well-formed files are damaged in many ways and read. */
@org.jspecify.annotations.NullMarked
package twinfeed.fuzz;
