package org.calicograph.fabric;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.calicograph.measure.Area;

/**
 * Notes for dyeing cotton to a run of shades from one dye: how much dye each piece takes.
 *
 * <p>Dye is counted on the weight of the dry cloth. Each piece takes half the dye of the one before it
 * (common practice for gradations with cold-water fibre-reactive dyes). The notes name no maker's
 * amounts of soda or salt: those are on the packet.
 *
 * @param cloth          the finished, washed area of each piece
 * @param gramsPerSquare weight of the cloth in grams a square metre; quilting cotton has 120 to 170
 *                       (common practice)
 * @param depth          dye for the deepest piece as a part of the weight of the cloth; 0.005 is pale,
 *                       0.02 medium, 0.04 deep (common practice)
 * @param pieces         how many, from the deepest to the palest
 */
public record Dyeing(Area cloth, double gramsPerSquare, double depth, int pieces) {

    /** What everybody does who dyes. */
    public static final List<String> CAUTIONS = List.of(
            "Wear gloves and an apron, and a dust mask while dye powder is open: breathing it in can cause allergies.",
            "Work where air moves, away from food; pots and spoons used for dye never go back to the kitchen.",
            "Keep dyes, soda and children apart; rinse splashes with plenty of water.",
            "The maker's instructions and safety sheet, and local rules for waste water, come before these notes.",
            "Wash until the water runs clear, and test with a white rag before the cloth goes into a quilt.");

    public Dyeing {
        if (!(cloth.squareInches() > 0)) {
            throw new IllegalArgumentException("the cloth to be dyed is " + cloth + "; use an area above 0");
        }
        if (!(gramsPerSquare >= 20 && gramsPerSquare <= 1000)) {
            throw new IllegalArgumentException("the cloth to be dyed weighs " + gramsPerSquare + " g a square metre; weigh it: quilting cotton has 120 to 170");
        }
        if (!(depth > 0 && depth <= 0.1)) {
            throw new IllegalArgumentException("a depth of shade of " + depth + " can't be dyed; use a part of the cloth's weight up to 0.1, such as 0.02");
        }
        if (pieces < 1 || pieces > 12) {
            throw new IllegalArgumentException("a run of " + pieces + " shades can't be told apart; use 1 to 12");
        }
    }

    /** Quilting cotton at 140 g a square metre. */
    public static Dyeing of(Area cloth, double depth, int pieces) {
        return new Dyeing(cloth, 140, depth, pieces);
    }

    /** The weight of one dry piece, in grams. */
    public double clothGrams() {
        return cloth.inSquareMetres() * gramsPerSquare;
    }

    /** The dye for each piece in grams, the deepest first. */
    public List<Double> dyeGrams() {
        List<Double> grams = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            grams.add(clothGrams() * depth / Math.pow(2, i));
        }
        return List.copyOf(grams);
    }

    /** The notes, cautions first. */
    public String notes() {
        StringBuilder out = new StringBuilder();
        CAUTIONS.forEach(c -> out.append("! ").append(c).append('\n'));
        out.append(String.format(Locale.ROOT, "Each piece: %s, %.0f g dry.%n", cloth, clothGrams()));
        List<Double> grams = dyeGrams();
        for (int i = 0; i < pieces; i++) {
            out.append(String.format(Locale.ROOT, "Piece %d: %.2f g of dye (%.2f %% of the cloth's weight).%n", i + 1, grams.get(i),
                    100 * depth / Math.pow(2, i)));
        }
        return out.append("Weigh the dye for piece 1 only and dissolve it; each later piece takes half as much of the solution.").toString();
    }
}
