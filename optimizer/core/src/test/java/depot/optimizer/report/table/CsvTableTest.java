package depot.optimizer.report.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTableTest {

    @Test
    void quotesWhatRfc4180AsksFor() {
        assertThat(CsvTable.cell("plain words")).isEqualTo("plain words");
        assertThat(CsvTable.cell("a,b")).isEqualTo("\"a,b\"");
        assertThat(CsvTable.cell("say \"hi\"")).isEqualTo("\"say \"\"hi\"\"\"");
        assertThat(CsvTable.cell("two\nlines")).isEqualTo("\"two\nlines\"");
        assertThat(CsvTable.cell("")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"=1+1", "+A1", "-A1", "@SUM(A1)", "\tx", "-1-1", "\uFF1D1", "=cmd|' /C calc'!A0", "-", "+1 555"})
    void neutralisesWhatLooksLikeAFormula(String text) {
        assertThat(CsvTable.cell(text)).isEqualTo("'" + text);
    }

    @Test
    void neutralisesBeforeItQuotes() {
        assertThat(CsvTable.cell("=A1,\"x\"")).isEqualTo("\"'=A1,\"\"x\"\"\"");
        assertThat(CsvTable.cell("\rx")).isEqualTo("\"'\rx\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-5", "+5", "-0.25", "-1.5E-7", "12", "01:00 +1"})
    void leavesNumbersAndTimesAlone(String text) {
        assertThat(CsvTable.cell(text)).isEqualTo(text);
    }

    @Test
    void writesRowsWithTheirUnitsAndEnds() {
        CsvTable table = new CsvTable(layout("a", "b_w", "c_time"));
        table.row(row -> row.text("x").number(1234.50, 3).time(1500));
        table.row(row -> row.empty().number(-0.0001, 2).time(405));

        assertThat(table.content()).isEqualTo("a,b_w,c_time\r\nx,1234.5,01:00 +1\r\n,0,06:45\r\n");
    }

    @Test
    void refusesARowOfAnotherWidth() {
        CsvTable table = new CsvTable(layout("a", "b"));

        assertThatThrownBy(() -> table.row(row -> row.text("x")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("t.csv has 2 columns, a row has 1 cells.");
    }

    private static TableLayout layout(String... columns) {
        return new TableLayout(
                "t.csv",
                "row",
                Stream.of(columns)
                        .map(name -> OutputColumn.words(name, "anything"))
                        .toList());
    }
}
