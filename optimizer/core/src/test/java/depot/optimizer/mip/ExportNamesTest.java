package depot.optimizer.mip;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExportNamesTest {

    @ParameterizedTest
    @CsvSource({
        "yard:upgrade, yard:upgrade, yard_upgrade",
        "1:upgrade, 1:upgrade, _1_upgrade",
        ".5:upgrade, .5:upgrade, _.5_upgrade",
        "E1:upgrade, E1:upgrade, _E1_upgrade",
        "east:upgrade, east:upgrade, east_upgrade",
        "e, e, _e",
        "Free, Free, _Free",
        "st, st, _st",
        "$x, _$x, _x",
        "North yard:a+b, North_yard:a+b, North_yard_a_b",
        "Köln:short@d0, Koln:short@d0, Koln_short@d0",
        "двор:up, ____:up, _____up"
    })
    void forbiddenLettersBecomeUnderscores(String name, String mps, String lp) {
        assertThat(ExportNames.forMps().legal(name)).isEqualTo(mps);
        assertThat(ExportNames.forLp().legal(name)).isEqualTo(lp);
    }

    @Test
    void namesThatComeOutAlikeAreNumbered() {
        MipModel model = new MipModel("alike");
        Var first = model.binary("a-b");
        model.binary("a_b");
        model.binary("a:b");
        model.binary("Constant");
        model.atMost("a b", new Expr().add(1, first), 1);
        ExportNames names = ExportNames.forLp("Constant");

        assertThat(names.ofColumns(model)).containsExactly("a_b", "a_b~2", "a_b~3", "Constant~2");
        assertThat(names.ofRows(model.rows())).containsExactly("a_b~4");
    }

    @Test
    void longNamesAreCutAndStayApart() {
        MipModel model = new MipModel("long");
        model.binary("x".repeat(300) + 1);
        model.binary("x".repeat(300) + 2);

        assertThat(ExportNames.forMps().ofColumns(model))
                .doesNotHaveDuplicates()
                .allSatisfy(name -> assertThat(name).hasSizeLessThan(256));
    }
}
