package org.calicograph.piecing;

import org.calicograph.seams.Unit;

/**
 * Joinings that are all alike, sewn one after another without cutting the thread.
 *
 * @param number of the step within its stage; what it makes is called unit so-and-so
 * @param what   pieces by their letters, units by their numbers
 * @param how    what a seam that isn't straight asks for; empty for a straight one
 * @param sample one of the joinings
 * @param times  in the whole quilt
 */
public record Chain(int number, String what, String how, Unit.Sewn sample, int times) {

    Chain with(Chain more) {
        return new Chain(number, what, how, sample, times + more.times);
    }

    Chain told(String other) {
        return new Chain(number, what, other, sample, times);
    }
}
