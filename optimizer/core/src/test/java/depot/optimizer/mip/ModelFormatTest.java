package depot.optimizer.mip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The exported texts, letter by letter. The formats, from memory: free MPS and LP as in the manuals of most solvers. {@link ModelRoundTripTest} has
 * other programs read them.
 */
class ModelFormatTest {

    /** A variable of every kind, a row of every kind, and a variable that nothing uses. */
    private static MipModel model() {
        MipModel model = new MipModel("north & south");
        model.scope("yard:");
        Var packs = model.integer("packs_row-of-four", 0, 99);
        Var built = model.binary("built");
        model.integer("upgrade", 0, 0);
        Var any = model.integer("any", 0, MipModel.INFINITY);
        Var energy = model.continuous("energy@d0", 0, MipModel.INFINITY);
        Var change = model.continuous("change", -5, 7.5);
        Var free = model.continuous("free", -MipModel.INFINITY, MipModel.INFINITY);
        Var below = model.continuous("below", -MipModel.INFINITY, -1);
        Var above = model.continuous("above", 2, MipModel.INFINITY);
        model.atMost("amps", new Expr().add(1 / 1.15, packs).add(-0.8, built).add(-3, built), 0);
        model.atLeast(
                "need", new Expr().add(1, energy).add(1, change).add(-2, change).add(1, any), 1e-7);
        model.equal(
                "sum",
                new Expr()
                        .add(1, free)
                        .add(1, below)
                        .add(1, above)
                        .add(1, built)
                        .add(-1, built),
                12_345_678.9);
        model.atMost("anything", new Expr().add(1, free), MipModel.INFINITY);
        model.cost(730.5);
        model.cost(125, packs);
        model.cost(1e-4, energy);
        model.cost(-1, above);
        return model;
    }

    @Test
    void writesFreeMps() {
        assertThat(ModelFormat.MPS.write(model())).isEqualTo("""
                        NAME north_&_south
                        ROWS
                         N COST
                         L yard:amps
                         G yard:need
                         E yard:sum
                        COLUMNS
                         Constant COST 730.5
                         MARKER0 'MARKER' 'INTORG'
                         yard:packs_row-of-four COST 125
                         yard:packs_row-of-four yard:amps 0.8695652173913044
                         yard:built yard:amps -3.8
                         yard:upgrade COST 0
                         yard:any yard:need 1
                         MARKER1 'MARKER' 'INTEND'
                         yard:energy@d0 COST 1.0E-4
                         yard:energy@d0 yard:need 1
                         yard:change yard:need -1
                         yard:free yard:sum 1
                         yard:below yard:sum 1
                         yard:above COST -1
                         yard:above yard:sum 1
                        RHS
                         RHS yard:need 1.0E-7
                         RHS yard:sum 1.23456789E7
                        BOUNDS
                         FX BOUND Constant 1
                         UP BOUND yard:packs_row-of-four 99
                         UP BOUND yard:built 1
                         FX BOUND yard:upgrade 0
                         PL BOUND yard:any
                         LO BOUND yard:change -5
                         UP BOUND yard:change 7.5
                         FR BOUND yard:free
                         MI BOUND yard:below
                         UP BOUND yard:below -1
                         LO BOUND yard:above 2
                        ENDATA
                        """);
    }

    @Test
    void writesLp() {
        assertThat(ModelFormat.LP.write(model())).isEqualTo("""
                        \\ north___south
                        Minimize
                         Obj: + 730.5 Constant + 125 yard_packs_row_of_four + 1.0E-4 yard_energy@d0 - 1 yard_above + 0 yard_upgrade
                        Subject To
                         yard_amps: + 0.8695652173913044 yard_packs_row_of_four - 3.8 yard_built <= 0
                         yard_need: + 1 yard_any + 1 yard_energy@d0 - 1 yard_change >= 1.0E-7
                         yard_sum: + 1 yard_free + 1 yard_below + 1 yard_above = 1.23456789E7
                        Bounds
                         Constant = 1
                         0 <= yard_packs_row_of_four <= 99
                         yard_upgrade = 0
                         -5 <= yard_change <= 7.5
                         yard_free free
                         -inf <= yard_below <= -1
                         yard_above >= 2
                        Generals
                         yard_packs_row_of_four
                         yard_upgrade
                         yard_any
                        Binaries
                         yard_built
                        End
                        """);
    }

    @Test
    void breaksTheLinesOfLongSums() {
        MipModel model = new MipModel("long");
        Expr sum = new Expr();
        for (int i = 0; i < 100; i++) {
            sum.add(1, model.continuous("variable_with_a_long_name_" + i, 0, 1));
        }
        model.atMost("sum", sum, 1);

        assertThat(ModelFormat.LP.write(model).lines())
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(130));
    }

    @ParameterizedTest
    @EnumSource
    void writesAModelWithoutAnything(ModelFormat format) {
        assertThat(format.write(new MipModel("none"))).contains("none").doesNotContain("General", "MARKER");
    }

    @ParameterizedTest
    @EnumSource
    void refusesWhatIsNoNumber(ModelFormat format) {
        MipModel model = new MipModel("broken");
        model.cost(Double.NaN, model.continuous("x", 0, 1));

        assertThatIllegalArgumentException().isThrownBy(() -> format.write(model));
    }

    @ParameterizedTest
    @EnumSource
    void writesTheSameAgain(ModelFormat format) {
        assertThat(format.write(model())).isEqualTo(format.write(model()));
    }
}
