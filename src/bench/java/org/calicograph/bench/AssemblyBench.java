package org.calicograph.bench;

import java.util.concurrent.TimeUnit;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.border.Border;
import org.calicograph.quilt.Medallion;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.setting.Setting;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * A top of about so many patches set straight, on point, in hexagons and as one block of single patches,
 * its patches listed. Time per patch is printed: it should not rise with their number.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class AssemblyBench {

    private static final Fabric SAND = Fabric.of("sand", "#e8dcc0");

    @Param({"500", "5000", "50000"})
    int patches;

    private Block block;
    private final Tally tally = new Tally("patch");

    @Setup
    public void draft() {
        block = Block.onGrid("Wheel", 2, Length.inches(6)).halvesFalling(0, 0, 1, Role.LIGHT, Role.DARK).turnedFourTimes().block();
    }

    @Setup(Level.Iteration)
    public void begin() {
        tally.begin();
    }

    @TearDown(Level.Iteration)
    public void perPatch() {
        tally.print();
    }

    private int counted(Patchwork top) {
        int all = top.patches().size();
        tally.add(all);
        return all;
    }

    private int side(double perBlock) {
        return Math.max(1, (int) Math.round(Math.sqrt(patches / perBlock)));
    }

    @Benchmark
    public int straight() {
        int n = side(8);
        return counted(Setting.straight(n, n).of(block));
    }

    @Benchmark
    public int onPoint() {
        int n = side(16);
        return counted(Setting.onPoint(n, n, SAND).of(block));
    }

    @Benchmark
    public int hexagons() {
        Block hexagon = Block.plain("hexagon", SAND, Region.of(Path.regular(6,
                Point.ORIGIN, 1, Angle.degrees(-90))));
        int n = side(1);
        return counted(Setting.hexagons(n, n, SAND).of(hexagon));
    }

    @Benchmark
    public int squaresWithBorders() {
        int n = side(1);
        Block square = Block.plain(SAND, Length.inches(2), Length.inches(2));
        Assembly centre = Setting.straight(n, n).of(square);
        return counted(Medallion.around(centre).with(Border.of(square)).with(Border.plain(SAND, Length.inches(2)).mitred()).top());
    }
}
