// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

/** Work was given up half-way because whoever asked for it does not want its answer any more. */
public final class NoLongerWantedException extends RuntimeException {
    private static final long serialVersionUID = 1;

    NoLongerWantedException() {
        super("nobody waits for this answer any more");
    }
}
