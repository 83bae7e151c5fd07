package depot.optimizer.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ChargerNamesTest {

    @Test
    void threeInARowBecomeARange() {
        assertThat(ChargerNames.of(List.of("wall-01", "wall-02", "wall-03"))).containsExactly("wall-01 to 03");
        assertThat(ChargerNames.of(List.of("wall-01", "wall-02"))).containsExactly("wall-01, 02");
        assertThat(ChargerNames.of(List.of("wall-09", "wall-11", "wall-10", "wall-01", "wall-03")))
                .containsExactly("wall-01, 03, 09 to 11");
    }

    @Test
    void eachCircuitHasItsOwn() {
        assertThat(ChargerNames.of(List.of("shed-02", "wall-01", "shed-01"))).containsExactly("shed-01, 02", "wall-01");
    }

    @Test
    void otherNamesStayAsTheyAre() {
        assertThat(ChargerNames.of(List.of("power bank of park-1", "power bank of park-2", "wall", "wall-01")))
                .containsExactly("wall-01", "power bank of park-1", "power bank of park-2", "wall");
    }
}
