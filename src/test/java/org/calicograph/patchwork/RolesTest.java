package org.calicograph.patchwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.calicograph.measure.Length.inches;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.calicograph.border.Border;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.quilt.Medallion;
import org.calicograph.quilting.Choice;
import org.calicograph.setting.Setting;
import org.junit.jupiter.api.Test;

/** Cloths go by roles; what was given a cloth of its own keeps it, and a role that is not there is said. */
class RolesTest {

    private static final Fabric NAVY = Fabric.of("navy", "#1f3a5f");
    private static final Fabric SAND = Fabric.of("sand", "#f1e7d2");
    private static final Fabric RUST = Fabric.of("rust", "#b5553c");
    private static final Block NINE = Block.onGrid("Nine", 2, inches(4)).square(Role.DARK, 0, 0, 1).square(Role.BACKGROUND, 1, 0, 1)
            .square(Role.BACKGROUND, 0, 1, 1).square(Role.DARK, 1, 1, 1).block();
    private static final Map<Role, Fabric> CLOTH = Map.of(Role.DARK, NAVY, Role.BACKGROUND, SAND, Role.ACCENT, RUST);

    private static Set<String> fabrics(Patchwork work) {
        return work.patches().stream().map(p -> p.fabric().name()).collect(Collectors.toSet());
    }

    @Test
    void sashes_borders_and_setting_triangles_that_were_given_a_cloth_keep_it_when_roles_get_theirs() {
        Patchwork sashed = Setting.sashed(2, 2, inches(1), RUST, NAVY).of(NINE).with(CLOTH);
        assertThat(fabrics(sashed)).containsExactlyInAnyOrder("navy", "sand", "rust");
        assertThat(sashed.patches().stream().filter(p -> p.fabric().equals(RUST))).isNotEmpty();
        assertThat(fabrics(Setting.onPoint(2, 2, RUST).of(NINE).with(CLOTH))).contains("rust");
        Patchwork top = Medallion.around(NINE).with(Border.plain(RUST, inches(2))).bound(NAVY).top();
        assertThat(fabrics(top.with(Role.BACKGROUND, SAND))).contains("rust", "sand");
    }

    @Test
    void a_ground_that_was_given_no_cloth_goes_with_the_background() {
        Block plain = Block.plain(Role.BACKGROUND.standIn(), inches(4), inches(4));
        assertThat(fabrics(Setting.straight(1, 2).alternating(NINE, plain).with(CLOTH))).containsExactlyInAnyOrder("navy", "sand");
    }

    @Test
    void a_role_that_is_not_there_is_said_with_those_that_are() {
        assertThatThrownBy(() -> NINE.with(Role.LIGHT, SAND)).isInstanceOf(DesignException.class)
                .hasMessageContaining("'Nine' has no patch whose role is 'light'").hasMessageContaining("'background', 'dark'");
        assertThatThrownBy(() -> NINE.with(Map.of(Role.of("drak"), NAVY, Role.BACKGROUND, SAND))).hasMessageContaining("Did you mean 'dark'?");
        assertThatThrownBy(() -> Border.of(NINE).with(Role.of("geese"), NAVY)).hasMessageContaining("the border of Nine");
        // One map serves many blocks: this one has no accent, and that is no fault.
        assertThat(fabrics(NINE.with(CLOTH))).containsExactlyInAnyOrder("navy", "sand");
    }

    @Test
    void choosing_patches_by_a_fabric_or_role_that_none_has_is_said() {
        Patchwork dressed = NINE.with(CLOTH);
        assertThat(Choice.of(dressed).in(NAVY).patches()).hasSize(2);
        assertThatThrownBy(() -> Choice.of(dressed).in(Fabric.of("navi", "#123456"))).hasMessageContaining("'navi'").hasMessageContaining("Did you mean 'navy'?");
        assertThatThrownBy(() -> Choice.of(dressed).in(Role.LIGHT)).hasMessageContaining("'background', 'dark'").hasMessageNotContaining("Did you mean");
    }
}
