package org.calicograph.stitching.route;

import java.lang.management.ManagementFactory;

/** Time that this thread has worked: other work on the machine does not count. */
final class Cpu {

    private Cpu() { }

    static long nanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
