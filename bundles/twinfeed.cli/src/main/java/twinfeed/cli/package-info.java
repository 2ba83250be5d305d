// SPDX-License-Identifier: EPL-2.0
/** The command line: verbs, text and JSON. It computes nothing; every answer comes from the use cases. */
@org.jspecify.annotations.NullMarked
package twinfeed.cli;
