// SPDX-License-Identifier: EPL-2.0
/**
 * The command line: verbs, text and JSON. It computes nothing; every answer comes from the use cases.
 *
 * <p>More than twenty classes: one for each verb with its arguments, all of them hidden behind
 * {@link twinfeed.cli.Verbs} and small. Divided they would have to be public.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.cli;
