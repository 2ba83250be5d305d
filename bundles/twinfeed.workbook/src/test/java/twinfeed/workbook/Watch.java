// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.lang.management.ManagementFactory;

/** Wall-clock and processor time of the present thread since it was made; on a busy machine only the second one can be compared. */
final class Watch {
    private final long wall = System.nanoTime();
    private final long processor = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();

    @Override
    public String toString() {
        long used = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - processor;
        return String.format("%.0f ms wall, %.0f ms processor", (System.nanoTime() - wall) / 1e6, used / 1e6);
    }
}
