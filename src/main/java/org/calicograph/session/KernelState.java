package org.calicograph.session;

import java.util.List;
import org.calicograph.wire.Catalogue;

/** How the kernel stands. */
public sealed interface KernelState {

    record Starting() implements KernelState { }

    /** @param broken stdlib files that are left out, with the reason */
    record Ready(long pid, List<Catalogue.Broken> broken) implements KernelState {
        public Ready {
            broken = List.copyOf(broken);
        }
    }

    /**
     * It ended; another is started when it is needed.
     *
     * @param asked true if somebody had it ended, or held what it could not let go of
     */
    record Gone(String why, boolean asked) implements KernelState { }
}
