package depot.optimizer.replay;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ViolationsTest {

    @ParameterizedTest
    @CsvSource({"0, 0 packs", "1, 1 pack", "2, 2 packs", "21, 21 packs"})
    void packsAreCountedInWords(int count, String words) {
        assertThat(Violations.packs(count)).isEqualTo(words);
    }
}
