package org.calicograph.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.PngWriter;
import org.calicograph.drawing.writing.SvgWriter;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Half-square triangles with outlines to each kind of file; ten times the patches should take at most ten times as long. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DrawingBenchmark {

    @Param({"1000", "10000", "100000"})
    public int patches;

    private Picture picture;
    private double pixelsPerInch;

    @Setup
    public void draw() {
        Colour navy = Colour.hex("#1f3a5f");
        Colour sand = Colour.hex("#e3cfa4");
        int across = (int) Math.ceil(Math.sqrt(patches / 2.0));
        List<Picture> units = new ArrayList<>();
        for (int i = 0; i < patches / 2; i++) {
            double x = i % across;
            double y = i / across;
            units.add(Picture.group(
                    Picture.of(Region.polygon(new Point(x, y), new Point(x + 1, y), new Point(x, y + 1))).filled(navy).outlined(Pen.SEAM),
                    Picture.of(Region.polygon(new Point(x + 1, y), new Point(x + 1, y + 1), new Point(x, y + 1))).filled(sand).outlined(Pen.SEAM)
                ).labelled("unit" + i, "unit " + i));
        }
        picture = Picture.group(units);
        pixelsPerInch = PngWriter.fitting(picture, 1600, 1600, 300);
    }

    @Benchmark
    public String svg() {
        return SvgWriter.write(picture);
    }

    @Benchmark
    public byte[] pdf() {
        return PdfWriter.write("a bench", picture);
    }

    @Benchmark
    public byte[] png() {
        return PngWriter.write(picture, pixelsPerInch);
    }
}
