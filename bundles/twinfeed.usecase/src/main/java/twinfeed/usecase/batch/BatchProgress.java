// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

/** Is told how far the work on a list has come. */
@FunctionalInterface
public interface BatchProgress {
    /**
     * Another row is done. What this throws ends the work.
     *
     * @param done rows done so far
     * @param all rows of the list
     * @param before how many of those done were judged by earlier work that was stopped
     */
    void done(int done, int all, int before);
}
