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
            return "Stopped";
        } else if (failure instanceof Failure.OutOfMemory || failure instanceof Failure.TooDeep) {
            return "It needed too much";
        } else if (failure instanceof Failure.ExitedKernel || failure instanceof Failure.KernelDied) {
            return "The kernel ended";
        } else if (failure instanceof Failure.Depends) {
            return "It waits for another cell";
        } else if (failure instanceof Failure.DeclaredTwice) {
            return "One name stands for two things";
        } else if (failure instanceof Failure.InCircle) {
            return "Cells wait for each other";
        }
        return "A dial can't take its value";
    }

    static String next(Failure failure) {
        if (failure instanceof Failure.DoesNotCompile) {
            return "Mend what is underlined, then draw the cell again with Ctrl+Enter.";
        } else if (failure instanceof Failure.Threw || failure instanceof Failure.ShowFailed) {
            return "Mend it and draw again with Ctrl+Enter. The other cells keep what they have.";
        } else if (failure instanceof Failure.Stopped) {
            return "Ctrl+Enter draws it again.";
        } else if (failure instanceof Failure.ExitedKernel || failure instanceof Failure.KernelDied) {
            return "Nothing of what you wrote is lost. Drawing a cell starts another kernel and draws what the cell needs.";
        } else if (failure instanceof Failure.DialRefused) {
            return "Turn the dial to a value it takes, or give it a wider range in the code.";
        }
        return "";
    }
}
