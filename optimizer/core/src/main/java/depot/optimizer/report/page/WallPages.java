package depot.optimizer.report.page;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.report.page.WallPage.Day;
import depot.optimizer.report.page.WallPage.Outlets;
import depot.optimizer.report.page.WallPage.Plug;
import depot.optimizer.report.table.CircuitLine;
import depot.optimizer.report.table.CircuitLine.Unit;
import depot.optimizer.report.table.CircuitLines;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.List;

/** Makes the sheet for a depot's wall. */
final class WallPages {

    /** Lines in big type that fit on two sheets of A4. */
    private static final int BIG = 46;

    /** Lines in type of the usual size, in two columns, that fit on two sheets of A4. */
    private static final int USUAL = 110;

    private WallPages() {}

    static WallPage of(PageMaker maker, DepotPlan plan) {
        List<Outlets> outlets = outlets(maker, plan);
        List<Day> days = LoadRounds.of(plan, maker.plan().settings().handoverMinutes());
        return new WallPage(
                maker.title(plan),
                "Scenario " + maker.plan().scenario(),
                maker.sheetLinks(plan, Sheet.WALL),
                css(lines(outlets, days)),
                outlets,
                days,
                Cautions.atTheWall());
    }

    private static String css(int lines) {
        return lines <= BIG ? "wall big" : lines <= USUAL ? "wall" : "wall small";
    }

    private static int lines(List<Outlets> outlets, List<Day> days) {
        int plugs =
                outlets.stream().mapToInt(circuit -> 1 + circuit.plugs().size()).sum();
        int loads = days.stream()
                .mapToInt(day -> 2
                        + day.rounds().stream()
                                .mapToInt(round -> 1 + round.benches().size())
                                .sum())
                .sum();
        return plugs + loads;
    }

    private static List<Outlets> outlets(PageMaker maker, DepotPlan plan) {
        List<Outlets> outlets = new ArrayList<>();
        for (CircuitLine line : CircuitLines.of(maker.catalog(), plan, maker.replay(plan))) {
            List<Plug> plugs = plugs(plan, line.name());
            if (!plugs.isEmpty()) {
                outlets.add(new Outlets(
                        line.name(), line.unit().map(WallPages::words).orElse(""), plugs));
            }
        }
        return outlets;
    }

    /** Such as "load-sharing unit unit-16, set to 12.8 A, to 9.8 A beside other loads". */
    static String words(Unit unit) {
        String lower = unit.besideOtherLoadsAmps() < unit.settingAmps()
                ? ", to " + Figures.read(unit.besideOtherLoadsAmps(), 1) + " A beside the other loads"
                : "";
        return "load-sharing unit " + unit.type().id() + ", set to " + Figures.read(unit.settingAmps(), 1) + " A"
                + lower;
    }

    private static List<Plug> plugs(DepotPlan plan, String circuit) {
        List<Plug> plugs = new ArrayList<>();
        for (ChargerPlacement charger : plan.chargers()) {
            if (charger.circuit().equals(circuit)) {
                plugs.add(new Plug(
                        (charger.shared() ? "unit " : "") + charger.outlet(),
                        charger.id(),
                        charger.chargerType(),
                        charger.priority()));
            }
        }
        for (BankPlacement bank : plan.banks()) {
            if (bank.circuit().equals(circuit)) {
                plugs.add(new Plug(
                        Integer.toString(bank.outlet()), "power bank of " + bank.crew(), bank.bankType(), false));
            }
        }
        return plugs;
    }
}
