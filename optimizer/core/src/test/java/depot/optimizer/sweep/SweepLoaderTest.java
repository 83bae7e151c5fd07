package depot.optimizer.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.check.Finding;
import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.fixture.VisitingCrew;
import depot.optimizer.fleet.SmallFleet;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.spec.LoadedSweep;
import depot.optimizer.sweep.spec.Sweep;
import depot.optimizer.sweep.spec.SweepLoader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a sweep's file may hold. */
class SweepLoaderTest {

    private static final Scenario SCENARIO = Planned.load(SmallFleet.lunch());

    @TempDir
    private Path folder;

    private LoadedSweep load(String text) {
        return load(text, SCENARIO);
    }

    private LoadedSweep load(String text, Scenario scenario) {
        try {
            Path file = folder.resolve("sweep.json");
            Files.writeString(file, text);
            return SweepLoader.load(file, scenario);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Findings as "line:member [value] message; hint". */
    private List<String> findings(String text) {
        return load(text).findings().stream().map(SweepLoaderTest::words).toList();
    }

    private static String words(Finding finding) {
        return "%d:%s [%s] %s; %s"
                .formatted(finding.line(), finding.column(), finding.value(), finding.message(), finding.hint());
    }

    @Test
    void everyPartIsTaken() {
        LoadedSweep loaded = load("""
                {
                  "$schema": "../sweep.schema.json",
                  "name": "all",
                  "tornado": {"purchases": "kept", "ranges": [{"change": "item_price", "of": "duo", "low": 0.5, "high": 2}]},
                  "lines": [{"name": "q", "change": "demand_quantile", "values": [0.8, 0.9]}],
                  "grids": [{"name": "g", "rows": {"change": "pack_health", "values": [0.8, 1]},
                             "columns": {"change": "work_hours", "of": "crew-1", "values": [0.5, 1]}}],
                  "cases": [{"name": "c", "changes": [{"change": "places", "of": "north", "value": -1},
                                                      {"change": "horizon", "value": 12}]}],
                  "losses": {"charger_out": "yes", "one_pack_in": 8, "late_minutes": 20}
                }
                """);

        assertThat(loaded.findings()).isEmpty();
        Sweep sweep = loaded.sweep().orElseThrow();
        assertThat(sweep.tornado().orElseThrow().purchases()).isEqualTo(Purchases.KEPT);
        assertThat(sweep.lines().get(0).purchases()).isEqualTo(Purchases.ANEW);
        assertThat(CaseList.of(sweep))
                .extracting(SweepCase::name)
                .containsExactly(
                        "Price of duo × 0.5",
                        "Price of duo × 2",
                        "q 0.8",
                        "q 0.9",
                        "g 0.8, × 0.5",
                        "g 0.8, × 1",
                        "g 1, × 0.5",
                        "g 1, × 1",
                        "c");
        assertThat(sweep.losses().orElseThrow().onePackIn()).hasValue(8);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "{\"change\": \"item_prices\", \"value\": 2} | change [item_prices] not one of the allowed words; maybe item_price",
                "{\"change\": \"item_price\", \"of\": \"duoo\", \"value\": 2} | of [duoo] the scenario has no such pack, charger, sharing unit or power bank; maybe duo",
                "{\"change\": \"horizon\", \"of\": \"duo\", \"value\": 2} | of [duo] horizon is about the whole scenario; leave \"of\" out",
                "{\"change\": \"places\", \"value\": 2} | of [] the member is missing; name a depot",
                "{\"change\": \"pack_health\", \"value\": 1.2} | value [1.2] out of range for pack_health; allowed: above 0, at most 1 (in place of what the tables say)",
                "{\"change\": \"horizon\", \"value\": 2.5} | value [2.5] not a whole number; horizon counts years",
                "{\"change\": \"horizon\", \"value\": \"2\"} | value [2] a number in quotes; write it without quotes",
                "{\"change\": \"horizon\", \"value\": [2]} | value [] one plain value is wanted here, not a list or an object; in the way and the unit of the kind",
                "{\"change\": \"horizon\"} | value [] the member is missing; in the way and the unit of the kind",
                "{\"change\": \"horizon\", \"value\": 2, \"valu\": 3} | valu [3] no such member; maybe value",
                "{\"change\": \"horizon\", \"value\": true} | value [true] not a number; write digits only, without a unit or a currency sign, like 12 or 3.5"
            })
    void aChangeNamesWhatIsThereWithinItsRange(String change, String finding) {
        assertThat(findings("{\"name\": \"s\", \"cases\": [{\"name\": \"c\",\n\"changes\": [%s]}]}".formatted(change)))
                .containsExactly("2:cases[0].changes[0]." + finding);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "\"name\": \"s\" | 1: [] the sweep asks for nothing; add tornado, lines, frontiers, grids, cases or losses",
                "\"name\": \"s\", \"losses\": {} | 1:losses [] no loss is asked for; add charger_out, one_pack_in or late_minutes, or leave losses out",
                "\"losses\": {\"late_minutes\": 5} | 1:name [] the member is missing; name of the sweep; its results go to a folder of this name, unless the command names another",
                "\"name\": \"a/b\", \"losses\": {\"late_minutes\": 5} | 1:name [a/b] not a key; begin with a letter or digit; then letters, digits, spaces, '.', '_' and '-'",
                "\"name\": \"s\", \"lines\": {} | 1:lines [] not a list; write it in square brackets: cost along one change",
                "\"name\": \"s\", \"lines\": [] | 1:lines [] the list is empty; leave it out, or fill it: cost along one change",
                "\"name\": \"s\", \"cases\": [7] | 1:cases[0] [7] not an object; write its members in braces: named cases",
                "\"name\": \"s\", \"losses\": {\"one_pack_in\": 1} | 1:losses.one_pack_in [1] out of range; allowed: 2 to 1000",
                "\"name\": \"s\", \"losses\": {\"charger_out\": true} | 1:losses.charger_out [true] not one of the allowed words; write yes or no",
                "\"name\": \"s\", \"lines\": [{\"name\": \"l\", \"change\": \"horizon\", \"values\": [3]}] | 1:lines[0].values [] one value only; write two values or more, such as [0.8, 0.9]",
                "\"name\": \"s\", \"lines\": [{\"name\": \"l\", \"change\": \"horizon\", \"values\": [5, 3]}] | 1:lines[0].values[1] [3] not above the value before it; list the values from low to high, each once",
                "\"name\": \"s\", \"tornado\": {\"ranges\": [{\"change\": \"horizon\", \"low\": 5, \"high\": 5}]} | 1:tornado.ranges[0].high [5] not above low; write the smaller value as low",
                "\"name\": \"s\", \"grids\": [{\"name\": \"g\", \"rows\": {\"change\": \"horizon\", \"values\": [5, 6]}, \"columns\": {\"change\": \"horizon\", \"values\": [7, 8]}}] | 1:grids[0].columns [] rows and columns change the same thing; a grid needs two different changes",
                "\"name\": \"s\", \"cases\": [{\"name\": \"c\", \"changes\": [{\"change\": \"horizon\", \"value\": 5}, {\"change\": \"horizon\", \"value\": 6}]}] | 1:cases[0].changes[1].change [horizon] the same thing is changed twice; keep one of the two changes",
                "\"name\": \"s\", \"cases\": [{\"name\": \"c\", \"changes\": [{\"change\": \"horizon\", \"value\": 5}]}, {\"name\": \"C\", \"changes\": [{\"change\": \"horizon\", \"value\": 6}]}] | 1:cases[1].name [C] the name is there twice; lines, frontiers, grids and cases have different names",
                "\"name\": \"s\", \"name\": \"t\", \"losses\": {\"late_minutes\": 5} | 1:name [t] the member is there twice; it is also on line 1; delete one of them"
            })
    void thePartsFitTogether(String members, String finding) {
        assertThat(findings("{" + members + "}")).containsExactly(finding);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "\"change\": \"budget\", \"values\": [1, 2] | of [] the member is missing; name one of the phases: first, second",
                "\"change\": \"budget\", \"of\": \"frist\", \"values\": [1, 2] | of [frist] the scenario has no such phase; maybe first",
                "\"change\": \"budget\", \"of\": \"first\", \"values\": [-1, 2] | values[0] [-1] out of range for budget; allowed: 0 to 1000000000 (in place of what the tables say)",
                "\"change\": \"all_budgets\", \"values\": [1, 2] | change [all_budgets] the scenario has no budget that could be multiplied; use budget, whose values are amounts",
                "\"change\": \"horizon\", \"values\": [5, 6] | change [horizon] a frontier is along a budget; use budget or all_budgets, or write it as a line",
                "\"change\": \"budget\", \"of\": \"first\", \"values\": [1, 2], \"purchases\": \"kept\" | purchases [kept] no such member; members here: name, change, of, values"
            })
    void aFrontierIsAlongABudgetThatThereIs(String members, String finding) {
        Scenario phases = Planned.load(TwoDepots.inPhases("first,0,", "second,2,"));
        String text = "{\"name\": \"s\", \"frontiers\": [{\"name\": \"f\", %s}]}".formatted(members);

        assertThat(load(text, phases).findings().stream().map(SweepLoaderTest::words))
                .containsExactly("1:frontiers[0]." + finding);
    }

    @Test
    void lossesMayBeAskedOfFleetsThatShareSomething() {
        String losses = "{\"name\": \"s\", \"losses\": {\"late_minutes\": 5}}";

        assertThat(load(losses, Planned.load(TwoDepots.inPhases("first,0,", "second,2,")))
                        .findings())
                .isEmpty();
        assertThat(load(losses, Planned.load(VisitingCrew.pair())).findings()).isEmpty();
    }

    @Test
    void aChangeThatBreaksTheScenarioIsToldWithWhatItBreaks() {
        assertThat(findings("""
                {
                  "name": "s",
                  "cases": [
                    {"name": "fits", "changes": [{"change": "lunch_minutes", "value": 30}]},
                    {"name": "too long", "changes": [{"change": "lunch_minutes", "value": 31}]}
                  ]
                }
                """))
                .singleElement()
                .asString()
                .startsWith("5:cases[1].changes [] the scenario is not sound with this change "
                        + "(Lunch stop of all crews: 31 min more): stops.csv, ");
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        assertThat(findings("""
                {
                  "nam": "s",
                  "lines": [{"name": "l", "change": "horizon", "values": [0, "x"]}],
                  "cases": [{"name": "c", "purchases": "some", "changes": []}]
                }
                """)).hasSize(6);
    }

    @Test
    void aFileThatIsNoJsonOrNotThereIsTold() {
        assertThat(findings("{\"name\": ")).singleElement().asString().contains("not JSON");
        assertThat(findings("")).singleElement().asString().contains("the file is empty");
        assertThat(findings("[]")).singleElement().asString().contains("not a JSON object");
        assertThat(SweepLoader.load(folder.resolve("none.json"), SCENARIO).findings())
                .singleElement()
                .extracting(Finding::message)
                .isEqualTo("the file is missing");
        assertThat(SweepLoader.load(folder, SCENARIO).findings())
                .singleElement()
                .extracting(Finding::message)
                .isEqualTo("the file cannot be read");
    }
}
