package depot.optimizer.dictionary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DictionaryTest {
    private static List<Table> all() {
        List<Table> all = new ArrayList<>(Dictionary.TABLES);
        all.add(Settings.TABLE);
        return all;
    }

    @Test
    void filesAndColumnsAreDeclaredOnce() {
        assertThat(all()).extracting(Table::file).doesNotHaveDuplicates();
        for (Table table : all()) {
            assertThat(table.fields()).extracting(Field::name).doesNotHaveDuplicates();
            assertThat(table.fields()).containsAll(table.key());
        }
    }

    @Test
    void everyFieldSaysWhatItMeansAndItsDefaultIsAValue() {
        for (Table table : all()) {
            for (Field<?> field : table.fields()) {
                assertThat(field.meaning()).as(field.name()).isNotBlank().doesNotContain("|");
                field.defaultText()
                        .ifPresent(text -> assertThatCode(() -> field.type().parse(text))
                                .as(table.file() + " " + field.name())
                                .doesNotThrowAnyException());
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"24:00,1440", "24:01,-1", "6:05,365", "06:05:00,365", "24:60,-1"})
    void timesReachTheirLimit(String text, int minutes) {
        int found;
        try {
            found = ValueType.timeUpTo(Units.MIDNIGHT).parse(text);
        } catch (BadValueException bad) {
            found = -1;
        }
        assertThat(found).isEqualTo(minutes);
    }

    @ParameterizedTest
    @CsvSource({
        "Mon-Sun,Mon-Sun",
        "sat-mon,Mon;Sat;Sun",
        "Tue;Thu,Tue;Thu",
        "Mon;Tue;Wed;Sun,Mon-Wed;Sun",
        "Sat;Sun,Sat;Sun"
    })
    void daysAreWrittenShort(String text, String shortest) throws BadValueException {
        assertThat(DaysSyntax.text(DaysSyntax.days(text))).isEqualTo(shortest);
    }

    @Test
    void everySetOfDaysIsReadBackAsWritten() throws BadValueException {
        for (int bits = 1; bits < 128; bits++) {
            EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
            for (DayOfWeek day : DayOfWeek.values()) {
                if ((bits >> (day.getValue() - 1)) % 2 == 1) {
                    days.add(day);
                }
            }
            assertThat(DaysSyntax.days(DaysSyntax.text(days))).isEqualTo(days);
        }
    }

    @Test
    void rangesAreSaidInWords() {
        assertThat(Range.atLeast("0").words()).isEqualTo("0 or more");
        assertThat(Range.above("0").atMost("1").words()).isEqualTo("above 0, at most 1");
        assertThat(Range.atLeast("0.5").below("1").words()).isEqualTo("0.5 or more, below 1");
        assertThat(Range.atLeast("1").atMost("3").words()).isEqualTo("1 to 3");
    }
}
