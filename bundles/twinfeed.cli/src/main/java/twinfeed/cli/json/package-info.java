// SPDX-License-Identifier: EPL-2.0
/** The JSON documents of the command line, behind {@link twinfeed.cli.json.JsonReport}; their schemas stand under {@code twinfeed/cli/schema}. */
@NullMarked
package twinfeed.cli.json;

import org.jspecify.annotations.NullMarked;
