package org.calicograph.desk.results;

import org.calicograph.wire.Failure;

/** For each kind of failure its name, and what the reader can do next, where the message doesn't say. */
final class Repairs {

    private Repairs() { }

    static String title(Failure failure) {
        if (failure instanceof Failure.DoesNotCompile) {
            return "Java can't read this yet";
        } else if (failure instanceof Failure.Threw) {
            return "It began, and could not go on";
        } else if (failure instanceof Failure.ShowFailed) {
            return "It has a value that can't be shown";
        } else if (failure instanceof Failure.TimedOut) {
            return "It took too long";
        } else if (failure instanceof Failure.Stopped) {
            return "Held";
        } else if (failure instanceof Failure.OutOfMemory || failure instanceof Failure.TooDeep) {
            return "It needed too much";
        } else if (failure instanceof Failure.ExitedKernel || failure instanceof Failure.KernelDied) {
            return "Drawing has ended by itself";
        } else if (failure instanceof Failure.Depends) {
            return "It waits for another passage";
        } else if (failure instanceof Failure.DeclaredTwice) {
            return "One name stands for two things";
        } else if (failure instanceof Failure.InCircle) {
            return "Passages wait for each other";
        }
        return "A dial can't take its value";
    }

    static String next(Failure failure) {
        if (failure instanceof Failure.Threw || failure instanceof Failure.ShowFailed) {
            return "Mend it; the rest keeps what it has.";
        } else if (failure instanceof Failure.Stopped) {
            return "F8 draws it now.";
        } else if (failure instanceof Failure.ExitedKernel || failure instanceof Failure.KernelDied) {
            return "Nothing of what you wrote is lost. F8 draws on.";
        } else if (failure instanceof Failure.DialRefused) {
            return "Turn the dial to a value it takes, or give it a wider range in its line.";
        }
        return "";
    }
}
