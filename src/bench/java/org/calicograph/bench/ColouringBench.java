package org.calicograph.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.calicograph.colouring.Colouring;
import org.calicograph.colouring.Contrast;
import org.calicograph.colouring.Gradient;
import org.calicograph.colouring.Lighting;
import org.calicograph.colouring.RunningOut;
import org.calicograph.colouring.Substitution;
import org.calicograph.colour.Colour;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Palette;
import org.calicograph.colour.Photo;
import org.calicograph.fabric.Ramp;
import org.calicograph.fabric.Role;
import org.calicograph.fabric.Stash;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Area;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.setting.Setting;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Colour on 10,000 patches (25 blocks of 400 half squares), and on a photograph of 12 million pixels. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ColouringBench {

    private Patchwork top;
    private List<Fabric> shades;
    private Map<Role, Fabric> roles;
    private Photo photo;
    private RunningOut shortOfBlue;

    @Setup
    public void make() {
        List<Patch> patches = new ArrayList<>();
        double h = 0.5;
        for (int i = 0; i < 200; i++) {
            double x = i % 20 * h;
            double y = i / 20 * 2 * h;
            patches.add(Patch.of("d" + i, Role.DARK, Region.polygon(Point.of(x, y), Point.of(x + h, y), Point.of(x, y + 2 * h))));
            patches.add(Patch.of("l" + i, Role.LIGHT, Region.polygon(Point.of(x + h, y), Point.of(x + h, y + 2 * h), Point.of(x, y + 2 * h))));
        }
        Block block = Block.of("half squares", Region.rectangle(new Box(0, 0, 10, 10)), patches);
        top = Setting.straight(5, 5).of(block);
        shades = Ramp.between(Colour.hex("#f2c48d"), Colour.hex("#1f3a5f"), 12).palette("dusk").fabrics();
        roles = Map.of(Role.DARK, shades.get(11), Role.LIGHT, shades.get(1));
        Random random = new Random(1);
        photo = Photo.drawn(4000, 3000, (x, y) -> {
            int base = y < 1400 ? 0xd2a46d : y < 2300 ? 0x2d4f66 : 0x4b3824;
            // Each channel strays by itself, so that thousands of bins are filled, as in a real photograph.
            return base + random.nextInt(48) + (random.nextInt(48) << 8) + (random.nextInt(45) << 16) + (x >> 7);
        });
        Fabric blue = shades.get(11).inHand(new Area(700));
        List<Fabric> cloths = new ArrayList<>(shades.subList(0, 11));
        cloths.replaceAll(f -> f.inHand(new Area(900)));
        cloths.add(blue);
        Patchwork mixed = top.recoloured(Colouring.blended(Gradient.cornerToCorner(top), shades, 2, 1));
        shortOfBlue = RunningOut.of(mixed, Stash.of(cloths));
    }

    @Benchmark
    public Patchwork recolouredByRole() {
        return top.with(roles);
    }

    @Benchmark
    public Patchwork recolouredAlongAGradient() {
        return top.recoloured(Colouring.blended(Gradient.cornerToCorner(top), shades, 1, 3));
    }

    @Benchmark
    public Patchwork shadowChosenFromTheStash() {
        return Lighting.shadow(Region.of(Path.circle(Point.of(25, 25), 15)), 0.4).choose(top, Stash.of(shades));
    }

    @Benchmark
    public Contrast contrastBetweenNeighbours() {
        return Contrast.of(top);
    }

    @Benchmark
    public Substitution clothSharedOut() {
        return shortOfBlue.solve();
    }

    @Benchmark
    public Palette paletteOfTwelveMegapixels() {
        return Palette.of(photo, 8);
    }
}
