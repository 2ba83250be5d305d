// SPDX-License-Identifier: EPL-2.0
/** Starts the assembled product: the framework, then one application, then an exit status. */
@NullMarked
package twinfeed.launcher;

import org.jspecify.annotations.NullMarked;
