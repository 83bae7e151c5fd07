package depot.optimizer.report.page;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.table.PackCounts;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.PackType;
import java.util.List;
import java.util.Map;

/** What the plan cannot see to: safe charging, safe carriage, licensed work. */
public final class Cautions {

    /** Largest rated energy of a lithium-ion battery under the lighter rules of ADR special provision 188, in Wh. */
    private static final double LIGHTER_RULES_WH = 100;

    private static final List<String> GENERAL = List.of(
            "This is a planning aid, not an electrical design. Circuits, supplies and load-sharing units follow local codes and are "
                    + "checked by a licensed electrician before anything is bought or plugged in.",
            "Charging lithium packs can start fires. The manufacturer's instructions for packs and chargers come before this plan.",
            "Charge between 0 and 40 °C only (32 to 105 °F; advice of the US Fire Administration). Let packs that come in "
                    + "cold or hot reach that range first; the plan allows no time for it.",
            "Keep chargers ventilated, with the clearance their maker asks for, on a surface that does not burn, away from escape "
                    + "routes and from anything that burns.",
            "Do not charge or carry packs that are damaged, swollen, leaking, wet or unusually hot. Set them aside outdoors, away "
                    + "from buildings and vehicles, and have them collected.",
            "Agree smoke detection, extinguishing and what to do in a fire with the fire-safety adviser and the insurer, above all "
                    + "where packs charge overnight in an unattended depot.");

    private static final List<String> AT_THE_WALL = List.of(
            "Leave every plug in its outlet: each circuit carries no more than this plan puts on it. Add nothing, no adapters, no "
                    + "extension leads.",
            "Collect first, then load. Packs charge in the order listed.",
            "Only packs that are dry and undamaged, between 0 and 40 °C. Swollen, leaking, wet or hot packs go outdoors, away from "
                    + "buildings and vehicles.",
            "Keep chargers uncovered and escape routes free. The manufacturers' instructions come before this sheet.",
            "Planning aid, not an electrical design: a licensed electrician checks the wiring first.");

    private Cautions() {}

    /** The few that have to be seen where packs are charged. */
    static List<String> atTheWall() {
        return AT_THE_WALL;
    }

    /** Those that hold for any depot. */
    public static List<String> general() {
        return GENERAL;
    }

    /** The lighter and the full rules of carriage, in short. */
    public static String carriage() {
        return "Packs in vehicles are dangerous goods. Under the European road agreement ADR, special provision 188 eases the rules for "
                + "lithium-ion batteries of up to 100 Wh each whose type passed the tests of UN 38.3 and which are protected against "
                + "short circuit and damage. Larger packs need more: see ADR for UN 3480 and UN 3481 and its exemptions, or ask "
                + "a dangerous-goods adviser. Other countries have rules of their own.";
    }

    /** Packs and power banks above 100 Wh that crews of a depot carry; without rows when there are none. */
    static TableView heavyPacks(Catalog catalog, DepotPlan plan) {
        TableView.Builder table = TableView.of(
                        "above-100-wh", "Carried by vehicles and above 100 Wh each: the lighter rules do not apply")
                .words("Crew and vehicle", "Pack or power bank")
                .numbers("Rated energy of one (Wh)", "Most carried at once (pieces)", "Their weight (kg)");
        for (Map.Entry<String, Map<String, Integer>> crew :
                PackCounts.mostCarried(plan).entrySet()) {
            crew.getValue().forEach((id, packs) -> {
                PackType type = catalog.packType(id);
                add(table, crew.getKey(), id, type.capacityWh(), packs, type.weightKg());
            });
        }
        plan.kits().stream()
                .filter(kit -> catalog.portableCharger(kit.item()).isEmpty())
                .forEach(kit -> {
                    var bank = catalog.bankType(kit.item());
                    add(table, kit.crew(), kit.item(), bank.energyWh(), kit.count(), bank.weightKg());
                });
        return table.build();
    }

    private static void add(
            TableView.Builder table, String crew, String item, double wattHours, int count, double weightKg) {
        if (wattHours > LIGHTER_RULES_WH && count > 0) {
            table.row(
                    crew, item, Figures.read(wattHours, 0), Figures.read(count, 0), Figures.read(count * weightKg, 1));
        }
    }
}
