package depot.optimizer.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.advice.Answer;
import depot.optimizer.advice.Difference;
import depot.optimizer.advice.FleetAdvice.LimitUse;
import depot.optimizer.advice.FleetAdvice.Measure;
import depot.optimizer.advice.FleetAdvice.More;
import depot.optimizer.report.text.Amounts;
import java.util.Currency;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What answers say: what is known for sure, what only the gap leaves open, and what is not known at all. */
class AdviceWordsTest {

    private final AdviceWords words = new AdviceWords(new Amounts(Currency.getInstance("EUR")));

    private static Answer answer(double found, double least, double most) {
        return new Answer(Answer.Ending.MET, Optional.empty(), Optional.of(new Difference(found, least, most)), "");
    }

    @Test
    void aSavingIsExactOrASpan() {
        assertThat(words.saves(answer(-5, -5, -5))).isEqualTo("saves 5.00");
        assertThat(words.saves(answer(-5, -7, -4))).isEqualTo("saves 5.00; at least 4.00, at most 7.00");
        assertThat(words.saves(answer(0, -7, 0)))
                .isEqualTo("nothing that can be told from the gap; at least 0.00, at most 7.00");
        assertThat(words.saves(answer(0, 0, 0))).isEqualTo("saves nothing");
    }

    @Test
    void aSavingWithoutABoundHasNoMost() {
        assertThat(words.saves(answer(-5, Double.NEGATIVE_INFINITY, -4)))
                .isEqualTo("saves 5.00; at least 4.00, at most not known");
    }

    @Test
    void aSharedLimitHasAPriceOrAStepOrWasNotAsked() {
        assertThat(words.price(use(Measure.MONEY, Optional.of(0.5), Optional.empty())))
                .isEqualTo("1 EUR more saves at most 0.5000 EUR beyond what the gap leaves open");
        assertThat(words.price(use(Measure.MONEY, Optional.empty(), Optional.of(new More(21, answer(-5, -5, -5))))))
                .isEqualTo("21 EUR more: saves 5.00");
        assertThat(words.price(use(Measure.PIECES, Optional.empty(), Optional.of(new More(1, answer(0, 0, 0))))))
                .isEqualTo("1 piece more: saves nothing");
        assertThat(words.price(use(Measure.PIECES, Optional.empty(), Optional.empty())))
                .startsWith("not asked");
    }

    private static LimitUse use(Measure measure, Optional<Double> price, Optional<More> more) {
        return new LimitUse("a limit", measure, 10, 8, price, more);
    }
}
