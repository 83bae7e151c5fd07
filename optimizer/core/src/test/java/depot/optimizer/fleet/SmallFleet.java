package depot.optimizer.fleet;

import depot.optimizer.fixture.ScenarioText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Fleets in text for tests that change them in ways whose effect on the cost is known. */
public final class SmallFleet {

    private static final Set<String> MONEY = Set.of(
            "price",
            "install_cost",
            "price_per_kwh",
            "standing_per_day",
            "demand_price_per_kw_month",
            "supply_upgrade_cost",
            "cost_per_year");

    private static final List<String> BY_DEPOT =
            List.of("depots.csv", "circuits.csv", "crews.csv", "stops.csv", "work.csv");

    private SmallFleet() {}

    /** One depot: two crews, one of them back for lunch, two circuits of which one is to be built, two chargers, two packs, a unit, two prices. */
    public static ScenarioText lunch() {
        return ScenarioText.tiny()
                .setting("shortage_cost_per_kwh", "40")
                .rows("circuits.csv", "north-2,north,230,1,10,2")
                .column("circuits.csv", "install_cost", "0")
                .replace("circuits.csv", "1,10,2,0", "1,10,2,150")
                .rows("pack_types.csv", "pack-800,blue,800,0.9,4,420,1000,8")
                .rows("charger_types.csv", "swift,1,1,1100,0.9,1,no,160,8")
                .rows("charge_times.csv", "duo,pack-800,70,100", "swift,pack-500,24,36", "swift,pack-800,38,57")
                .table("sharing_units.csv", """
                        unit_type,outlets,amps,priority_outlets,price,life_years
                        unit,4,10,1,90,10
                        """)
                .rows("crews.csv", "crew-2,north,6,40")
                .rows(
                        "stops.csv",
                        "summer,Mon-Fri,crew-2,1,north,,07:30",
                        "summer,Mon-Fri,crew-2,2,green,08:00,11:30",
                        "summer,Mon-Fri,crew-2,3,north,12:00,13:00",
                        "summer,Mon-Fri,crew-2,4,lane,13:30,16:30",
                        "summer,Mon-Fri,crew-2,5,north,17:00,")
                .rows("work.csv", "summer,Mon-Fri,crew-2,2,trimmer,1.5", "summer,Mon-Fri,crew-2,4,trimmer,1.5")
                .table("tariffs.csv", """
                        tariff,days,from,to,price_per_kwh
                        flat,Mon-Sun,00:00,07:00,0.10
                        flat,Mon-Sun,07:00,22:00,0.35
                        flat,Mon-Sun,22:00,24:00,0.10
                        """);
    }

    /** One depot whose week has two seasons and a weekend of its own, a demand charge and a tight supply. */
    public static ScenarioText seasons() {
        return ScenarioText.tiny()
                .setting("shortage_cost_per_kwh", "40")
                .column("seasons.csv", "pack_capacity_factor", "1")
                .rows("seasons.csv", "winter,12,0.8")
                .replace("depots.csv", "3,63,10", "3,4,10")
                .replace(
                        "depots.csv",
                        "supply_amps,places",
                        "supply_amps,places,supply_upgrade_amps,supply_upgrade_cost")
                .replace("depots.csv", "3,4,10", "3,4,10,8,700")
                .table("tariff_terms.csv", """
                        tariff,standing_per_day,demand_price_per_kw_month,demand_minutes
                        flat,0,6,15
                        """)
                .rows("charger_types.csv", "swift,1,1,1100,0.9,1,no,160,8")
                .rows("charge_times.csv", "swift,pack-500,24,36")
                .rows(
                        "stops.csv",
                        "winter,Mon-Thu,crew-1,1,north,,07:00",
                        "winter,Mon-Thu,crew-1,2,park,08:00,14:00",
                        "winter,Mon-Thu,crew-1,3,north,15:00,",
                        "summer,Sat,crew-1,1,north,,09:00",
                        "summer,Sat,crew-1,2,park,10:00,12:00",
                        "summer,Sat,crew-1,3,north,13:00,")
                .rows("work.csv", "winter,Mon-Thu,crew-1,2,trimmer,3", "summer,Sat,crew-1,2,trimmer,1");
    }

    /** The rows of every table in the opposite order. */
    public static ScenarioText reversed(ScenarioText text) {
        ScenarioText edited = text;
        for (String file : text.files()) {
            if (file.endsWith(".csv")) {
                List<String> lines =
                        new ArrayList<>(Arrays.asList(text.text(file).split("\n")));
                Collections.reverse(lines.subList(1, lines.size()));
                edited = edited.table(file, String.join("\n", lines) + "\n");
            }
        }
        return edited;
    }

    /** One word for another in all tables. */
    public static ScenarioText renamed(ScenarioText text, String from, String to) {
        ScenarioText edited = text;
        for (String file : text.files()) {
            if (file.endsWith(".csv")) {
                edited = edited.table(file, text.text(file).replaceAll("\\b" + from + "\\b", to));
            }
        }
        return edited;
    }

    /** All money times ten. */
    public static ScenarioText tenfold(ScenarioText text) {
        ScenarioText edited =
                text.replace("scenario.json", "\"shortage_cost_per_kwh\": 40", "\"shortage_cost_per_kwh\": 400");
        for (String file : text.files()) {
            if (file.endsWith(".csv")) {
                String[] lines = text.text(file).split("\n");
                List<String> columns = List.of(lines[0].split(","));
                for (int row = 1; row < lines.length; row++) {
                    String[] cells = lines[row].split(",", -1);
                    for (int i = 0; i < cells.length; i++) {
                        if (MONEY.contains(columns.get(i)) && !cells[i].isEmpty()) {
                            cells[i] = Double.toString(10 * Double.parseDouble(cells[i]));
                        }
                    }
                    lines[row] = String.join(",", cells);
                }
                edited = edited.table(file, String.join("\n", lines) + "\n");
            }
        }
        return edited;
    }

    /** A second depot just like the first, with crews and circuits of its own. */
    public static ScenarioText twice(ScenarioText text) {
        ScenarioText edited = text;
        for (String file : BY_DEPOT) {
            List<String> lines = text.text(file).lines().skip(1).toList();
            edited = edited.rows(
                    file,
                    lines.stream()
                            .map(line -> line.replace("north", "south").replace("crew-", "squad-"))
                            .collect(Collectors.joining("\n")));
        }
        return edited;
    }
}
