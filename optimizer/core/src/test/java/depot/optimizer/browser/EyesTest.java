package depot.optimizer.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class EyesTest {

    private static final Rgb WHITE = new Rgb(255, 255, 255);

    /** Black on white is 21 by the definition; the greys around 4.5 are common practice (from memory, recomputed). */
    @ParameterizedTest
    @CsvSource({"0, 21.00", "118, 4.54", "119, 4.48", "255, 1.00"})
    void contrastOfGreysOnWhite(int grey, double ratio) {
        assertThat(new Rgb(grey, grey, grey).contrast(WHITE)).isCloseTo(ratio, within(0.005));
        assertThat(WHITE.contrast(new Rgb(grey, grey, grey))).isCloseTo(ratio, within(0.005));
    }

    /** Pure colours on white (from memory): red 4.00, green 1.37, blue 8.59. */
    @ParameterizedTest
    @CsvSource({"255, 0, 0, 4.00", "0, 255, 0, 1.37", "0, 0, 255, 8.59"})
    void contrastOfPureColoursOnWhite(int red, int green, int blue, double ratio) {
        assertThat(new Rgb(red, green, blue).contrast(WHITE)).isCloseTo(ratio, within(0.005));
    }

    @ParameterizedTest
    @EnumSource
    void greysStayGrey(Eyes eyes) {
        for (int grey = 0; grey <= 255; grey += 51) {
            Rgb colour = new Rgb(grey, grey, grey);
            assertThat(eyes.seen(colour)).containsExactly(colour.light(), within(2e-6));
        }
    }

    /** L* runs from 0 for black to 100 for white. */
    @ParameterizedTest
    @EnumSource
    void blackAndWhiteAreAHundredApart(Eyes eyes) {
        assertThat(eyes.distance(new Rgb(0, 0, 0), WHITE)).isCloseTo(100, within(0.05));
    }

    /** A dark red and an olive of the same brightness are one colour to those without cones for long or for middle waves. */
    @Test
    void redAndGreenMixUpWithoutTheirCones() {
        Rgb red = new Rgb(196, 60, 40);
        Rgb olive = new Rgb(104, 104, 30);
        assertThat(Eyes.FULL.distance(red, olive)).isGreaterThan(50);
        assertThat(Eyes.DEUTERANOPIA.distance(red, olive)).isLessThan(20);
    }
}
