package depot.optimizer.advice;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.plan.Certificate;
import org.junit.jupiter.api.Test;

/** What can be told of two plans that are each known within a gap; spans worked out by hand. */
class DifferenceTest {

    private static Certificate between(double bound, double cost) {
        return Certificate.of(cost, bound, 0.01);
    }

    @Test
    void aRestrictionCostsBetweenBoundLessCostAndCostLessBound() {
        assertThat(Difference.harder(between(990, 1000), between(1100, 1120))).isEqualTo(new Difference(120, 100, 130));
    }

    @Test
    void aRestrictionNeverSavesMoney() {
        // A cheaper plan was met by chance: the search for the first one stopped within its gap.
        Difference difference = Difference.harder(between(990, 1000), between(980, 995));

        assertThat(difference).isEqualTo(new Difference(-5, 0, 5));
        assertThat(difference.told()).isFalse();
    }

    @Test
    void moreRoomNeverCostsMoney() {
        // The plan as it is still fits, so that the dearer one found is not the best.
        assertThat(Difference.easier(between(990, 1000), between(985, 1010))).isEqualTo(new Difference(0, -15, 0));
    }

    @Test
    void aSavingBeyondTheGapIsTold() {
        Difference difference = Difference.easier(between(990, 1000), between(900, 920));

        assertThat(difference).isEqualTo(new Difference(-80, -100, -70));
        assertThat(difference.told()).isTrue();
    }

    @Test
    void aSavingWithinTheGapIsNot() {
        assertThat(Difference.easier(between(990, 1000), between(900, 990)).told())
                .isFalse();
        assertThat(Difference.easier(between(990, 1000), between(900, 989.99)).told())
                .isTrue();
    }

    @Test
    void nothingIsSurelyNone() {
        assertThat(Difference.none().surelyNone()).isTrue();
        assertThat(Difference.none().told()).isFalse();
        assertThat(new Difference(0, 0, 5).surelyNone()).isFalse();
    }
}
