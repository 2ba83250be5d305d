// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.window;

import java.util.concurrent.Executor;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;

/** Work that is done one piece after the other, out of the user interface's thread. */
final class BackgroundWork implements Executor {
    /** Keeps two pieces apart. */
    private static final class OneByOne implements ISchedulingRule {
        @Override
        public boolean contains(ISchedulingRule rule) {
            return rule == this;
        }

        @Override
        public boolean isConflicting(ISchedulingRule rule) {
            return rule == this;
        }
    }

    private final String name;
    private final long pauseMs;
    private final ISchedulingRule rule = new OneByOne();

    /**
     * Work of one sort.
     *
     * @param name for those who look at running work
     * @param pauseMs how long to wait before each piece: while somebody types on, what was asked before is not begun
     */
    BackgroundWork(String name, long pauseMs) {
        this.name = name;
        this.pauseMs = pauseMs;
    }

    @Override
    public void execute(Runnable work) {
        ICoreRunnable piece = monitor -> {
            pause();
            work.run();
        };
        Job job = Job.createSystem(name, piece);
        job.setRule(rule);
        job.setPriority(Job.SHORT);
        job.schedule();
    }

    /** By the platform's own delay a piece would begin up to 50 ms later than was asked for, so long do its idle workers sleep. */
    private void pause() {
        try {
            Thread.sleep(pauseMs);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
