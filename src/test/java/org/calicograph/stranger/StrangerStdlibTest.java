package org.calicograph.stranger;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.calicograph.book.Booklet;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;
import org.calicograph.setting.Setting;
import org.calicograph.stdlib.CompiledStdlib;
import org.junit.jupiter.api.Test;

/** Every block that comes with the product, in a small quilt, by inch and by metric rules. */
class StrangerStdlibTest {

    private static List<Patchwork> blocks(Length side) {
        List<Patchwork> all = new ArrayList<>();
        for (String name : CompiledStdlib.names()) {
            Class<?> type = CompiledStdlib.named(name);
            if (Stream.of(type.getMethods()).anyMatch(m -> m.getName().equals("block") && m.getParameterCount() == 1 && m.getParameterTypes()[0] == Length.class)) {
                all.add((Patchwork) CompiledStdlib.call(type, "block", side));
            }
        }
        return all;
    }

    @Test
    void she_sews_a_small_quilt_of_every_block() {
        sewAll(blocks(Length.inches(12)), CuttingRules.INCH);
    }

    @Test
    void she_sews_them_by_metric_rules() {
        sewAll(blocks(Length.cm(30)), CuttingRules.METRIC);
    }

    @Test
    void she_sews_rings_and_shells() {
        Fabric sand = Fabric.of("sand", "#e8dcc0");
        Fabric rust = Fabric.of("rust", "#a0522d");
        Quilt rings = Quilt.of("Mooring Rings", Setting.rings(2, 2, sand).of(block("DoubleWeddingRing", Length.inches(12)))).bound(rust);
        StrangerTest.sewn(rings, Booklet.of(rings));
        Quilt shells = Quilt.of("Fish Weir", Setting.shells(3, 3, sand).of(block("Clamshell", Length.inches(6)))).bound(rust);
        StrangerTest.sewn(shells, Booklet.of(shells));
    }

    private static Patchwork block(String name, Length width) {
        return (Patchwork) CompiledStdlib.call(CompiledStdlib.named(name), "block", width);
    }

    private static void sewAll(List<Patchwork> blocks, CuttingRules rules) {
        SoftAssertions soft = new SoftAssertions();
        for (Patchwork block : blocks) {
            boolean square = block instanceof Block b && b.isRectangular() && block.width().equals(block.height());
            Quilt quilt = Quilt.of(block.name(), square ? Setting.straight(2, 2).of(block) : block);
            soft.assertThatCode(() -> StrangerTest.sewn(quilt, Booklet.of(quilt).with(rules))).as(block.name()).doesNotThrowAnyException();
        }
        soft.assertAll();
    }
}
