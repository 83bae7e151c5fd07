package depot.optimizer.rerun.input;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.rerun.input.InputChange.Kind;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InputChangesTest {

    private static final ScenarioText TEXT = ScenarioText.tiny();

    @TempDir
    private Path folder;

    @Test
    void orderAndWritingDoNotCount() {
        ScenarioText rewritten = TEXT.table("tools.csv", "average_watts,tool,family\n400.0,trimmer,blue\n")
                .replace("scenario.json", "0.05", "0.050")
                .replace("stops.csv", "Mon-Fri,crew-1,2", "mon;tue;wed;thu;fri,crew-1,2")
                .column("circuits.csv", "install_cost", "0");
        assertThat(changes(rewritten)).isEmpty();
    }

    @Test
    void aRowSplitByDaysIsTheSameRow() {
        ScenarioText split = TEXT.replace(
                "work.csv",
                "summer,Mon-Fri,crew-1,2,trimmer,2",
                "summer,Mon,crew-1,2,trimmer,2\nsummer,Tue-Fri,crew-1,2,trimmer,2");
        assertThat(changes(split)).isEmpty();
    }

    @Test
    void aChangeOnSomeDaysNamesThem() {
        ScenarioText split = TEXT.replace(
                "work.csv",
                "summer,Mon-Fri,crew-1,2,trimmer,2",
                "summer,Mon-Wed,crew-1,2,trimmer,2\nsummer,Thu-Fri,crew-1,2,trimmer,3");
        assertThat(changes(split))
                .containsExactly(new InputChange(
                        "work.csv",
                        "season summer, crew crew-1, stop 2, tool trimmer, days Thu;Fri",
                        Kind.CELL_CHANGED,
                        "hours",
                        "2",
                        "3"));
    }

    @Test
    void rowsComeAndGo() {
        ScenarioText other = TEXT.replace("crews.csv", "crew-1,north,8,60", "crew-2,north,9,60");
        assertThat(changes(other))
                .containsExactly(
                        new InputChange(
                                "crews.csv",
                                "crew crew-1",
                                Kind.ROW_REMOVED,
                                "",
                                "depot north, pack_places 8, payload_kg 60",
                                ""),
                        new InputChange(
                                "crews.csv",
                                "crew crew-2",
                                Kind.ROW_ADDED,
                                "",
                                "",
                                "depot north, pack_places 9, payload_kg 60"));
    }

    @Test
    void aTableWithoutAKeyIsComparedByAllButItsValue() {
        ScenarioText dearer = TEXT.replace("tariffs.csv", "0.30", "0.35");
        assertThat(changes(dearer))
                .containsExactly(new InputChange(
                        "tariffs.csv",
                        "tariff flat, from 00:00, to 24:00",
                        Kind.CELL_CHANGED,
                        "price_per_kwh",
                        "0.30",
                        "0.35"));
    }

    @Test
    void rowsAlikeAreCounted() {
        String head = "depot,days,from,to,amps\n";
        String row = "north,Mon-Sun,08:00,10:00,3\n";
        ScenarioText once = TEXT.table("base_load.csv", head + row);
        ScenarioText twice = TEXT.table("base_load.csv", head + row + row);
        assertThat(InputChanges.between(once.write(folder.resolve("once")), twice.write(folder.resolve("twice"))))
                .containsExactly(new InputChange(
                        "base_load.csv", "depot north, from 08:00, to 10:00", Kind.ROW_ADDED, "", "", "amps 3"));
    }

    @Test
    void settingsAndNewTablesAreCompared() {
        ScenarioText other = TEXT.setting("pack_health", "0.8")
                .table("owned.csv", "depot,circuit,crew,item,count\nnorth,,,pack-500,2\n");
        assertThat(changes(other))
                .containsExactly(
                        new InputChange("scenario.json", "", Kind.CELL_CHANGED, "pack_health", "", "0.8"),
                        new InputChange("owned.csv", "depot north, item pack-500", Kind.ROW_ADDED, "", "", "count 2"));
    }

    private List<InputChange> changes(ScenarioText after) {
        return InputChanges.between(TEXT.write(folder.resolve("before")), after.write(folder.resolve("after")));
    }
}
