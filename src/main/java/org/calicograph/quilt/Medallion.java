package org.calicograph.quilt;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.border.Round;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Transform;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * A centre and the rounds about it: borders, and rounds that stand it on its point or set it in an octagon
 * or a ring.
 *
 * @param centre a rectangular patchwork
 * @param rounds from the inside out
 */
public record Medallion(Patchwork centre, List<Round> rounds) {

    public Medallion {
        rounds = List.copyOf(rounds);
    }

    /** Begins a medallion with its centre; rounds are added from the inside out. */
    public static Medallion around(Patchwork centre) {
        return new Medallion(centre, List.of());
    }

    /** One more round outside. */
    public Medallion with(Round round) {
        List<Round> more = new ArrayList<>(rounds);
        more.add(round);
        return new Medallion(centre, more);
    }

    /**
     * The whole top. Ids begin with {@code centre/} or {@code border1-…}, counted from the inside.
     *
     * @throws DesignException if a round doesn't fit, naming it
     */
    public Patchwork top() {
        Patchwork top = centre;
        List<Placed> parts = new ArrayList<>();
        parts.add(new Placed("centre", centre, Transform.IDENTITY));
        for (int i = 0; i < rounds.size(); i++) {
            Assembly round = rounds.get(i).around(top, "border" + (i + 1), i + 1);
            Transform in = round.parts().get(0).place();
            List<Placed> outer = new ArrayList<>();
            for (Placed p : parts) {
                outer.add(p.moved(in));
            }
            outer.addAll(round.parts().subList(1, round.parts().size()));
            parts = outer;
            top = round;
        }
        return rounds.isEmpty() ? centre : Assembly.of("medallion", top.outline(), parts);
    }

    /** The finished quilt, bound in a fabric. */
    public Quilt bound(Fabric binding) {
        return Quilt.of("Medallion", top()).bound(binding);
    }
}
