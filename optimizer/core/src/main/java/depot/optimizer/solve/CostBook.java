package depot.optimizer.solve;

import depot.optimizer.finance.PresentCost;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.SharingUnitType;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Lists what a depot's plan costs over the horizon, line by line. */
final class CostBook {

    private final DepotProblem problem;
    private final PresentCost money;
    private final List<CostLine> lines = new ArrayList<>();

    CostBook(DepotProblem problem) {
        this.problem = problem;
        money = problem.money();
    }

    /** What a plan costs; its own lines do not matter. */
    static List<CostLine> of(DepotProblem problem, DepotPlan plan) {
        CostBook book = new CostBook(problem);
        book.addPacks(plan.packs());
        book.addChargers(plan.chargers(), plan.kits());
        book.addUnits(plan.units());
        book.addBuilding(plan.circuitsBuilt(), plan.supplyUpgraded());
        book.addDays(plan.days());
        book.addPetrol(plan.onPetrol());
        return book.lines();
    }

    List<CostLine> lines() {
        return List.copyOf(lines);
    }

    void addPacks(List<PackStock> stocks) {
        for (PackType type : problem.packTypes()) {
            double price = type.price().doubleValue();
            List<PackStock> ofType =
                    stocks.stream().filter(s -> s.packType().equals(type.id())).toList();
            int bought = ofType.stream().mapToInt(s -> s.count() - s.owned()).sum();
            double replaced =
                    ofType.stream().mapToDouble(PackStock::replacedPerYear).sum();
            add(Category.PACKS, type.id(), bought, "piece", money.stockedPack(price));
            add(Category.PACK_WEAR, type.id(), replaced, "piece/year", price * money.annuity());
        }
    }

    void addChargers(List<ChargerPlacement> placed, List<CrewKit> kits) {
        List<ChargerType> types = new ArrayList<>();
        problem.chargers().forEach(option -> types.add(option.type()));
        problem.portableChargers().forEach(option -> types.add(option.type()));
        for (ChargerType type : types) {
            long all = placed.stream()
                            .filter(c -> c.chargerType().equals(type.id()))
                            .count()
                    + kitCount(kits, type.id());
            long owned = placed.stream()
                            .filter(c -> c.chargerType().equals(type.id()) && c.owned())
                            .count()
                    + kitOwned(kits, type.id());
            addPieces(
                    Category.CHARGERS,
                    type.id(),
                    all,
                    owned,
                    new Piece(type.price(), type.installCost(), type.lifeYears()));
        }
        for (PowerBankType type : problem.bankTypes()) {
            addPieces(
                    Category.POWER_BANKS,
                    type.id(),
                    kitCount(kits, type.id()),
                    kitOwned(kits, type.id()),
                    new Piece(type.price(), BigDecimal.ZERO, type.lifeYears()));
        }
    }

    private static long kitCount(List<CrewKit> kits, String item) {
        return kits.stream()
                .filter(kit -> kit.item().equals(item))
                .mapToInt(CrewKit::count)
                .sum();
    }

    private static long kitOwned(List<CrewKit> kits, String item) {
        return kits.stream()
                .filter(kit -> kit.item().equals(item))
                .mapToInt(CrewKit::owned)
                .sum();
    }

    void addUnits(List<UnitPlacement> units) {
        for (SharingUnitType type : problem.unitTypes()) {
            List<UnitPlacement> ofType =
                    units.stream().filter(u -> u.unitType().equals(type.id())).toList();
            long owned = ofType.stream().filter(UnitPlacement::owned).count();
            addPieces(
                    Category.SHARING_UNITS,
                    type.id(),
                    ofType.size(),
                    owned,
                    new Piece(type.price(), type.installCost(), type.lifeYears()));
        }
    }

    private record Piece(BigDecimal price, BigDecimal install, double lifeYears) {}

    private void addPieces(Category category, String item, long all, long owned, Piece piece) {
        double price = piece.price().doubleValue();
        double bought = money.newPiece(price, piece.install().doubleValue(), piece.lifeYears());
        add(category, item, (int) (all - owned), "piece", bought);
        add(category, item, (int) owned, "owned piece", money.ownedPiece(price, piece.lifeYears()));
    }

    void addBuilding(List<String> circuitsBuilt, boolean upgraded) {
        for (CircuitSite site : problem.circuits()) {
            if (circuitsBuilt.contains(site.circuit().id())) {
                add(
                        Category.CIRCUITS,
                        site.circuit().id(),
                        1,
                        "piece",
                        site.circuit().installCost().doubleValue());
            }
        }
        if (upgraded) {
            double cost = problem.depot().supplyUpgradeCost().doubleValue();
            add(Category.SUPPLY, problem.depot().id(), 1, "piece", cost);
        }
    }

    void addDays(List<DayPlan> days) {
        Map<BigDecimal, Double> kwhByPrice = new TreeMap<>();
        Map<String, Double> demandBySeason = new TreeMap<>();
        double shortKwh = 0;
        for (DayPlan day : days) {
            for (EnergyUse use : day.energy()) {
                kwhByPrice.merge(use.pricePerKwh().stripTrailingZeros(), use.kwh() * day.daysPerYear(), Double::sum);
            }
            for (SeasonDay occurrence : day.occurrences()) {
                demandBySeason.merge(occurrence.season(), day.demandKw(), Math::max);
            }
            shortKwh += day.trips().stream()
                            .flatMap(trip -> trip.shortages().stream())
                            .mapToDouble(TripPlan.Shortage::wattHours)
                            .sum()
                    * day.daysPerYear()
                    / 1000;
        }
        String tariff = problem.depot().tariff();
        kwhByPrice.forEach((price, kwh) -> add(
                Category.ENERGY,
                tariff + " at " + price.toPlainString(),
                kwh,
                "kWh/year",
                price.doubleValue() * money.electricityAnnuity()));
        for (Season season : problem.seasons()) {
            double months = PresentCost.months(season.weeksPerYear());
            double price = problem.tariff().demandPricePerKwMonth() * months * money.electricityAnnuity();
            add(Category.DEMAND, season.id(), demandBySeason.getOrDefault(season.id(), 0.0), "kW", price);
        }
        double standing = problem.tariff().standingPerDay() * money.electricityAnnuity();
        if (standing > 0) {
            add(Category.STANDING, tariff, 365.25, "day/year", standing);
        }
        add(Category.CREW_BASES, problem.depot().id(), problem.crewBaseCostPerYear(), "a year", money.annuity());
        add(Category.SHORTAGE, problem.depot().id(), shortKwh, "kWh/year", problem.shortagePerKwh() * money.annuity());
    }

    void addPetrol(List<String> crews) {
        for (Crew crew : problem.crews()) {
            if (crews.contains(crew.id())) {
                add(Category.PETROL, crew.id(), crew.petrolCostPerYear().doubleValue(), "a year", money.annuity());
            }
        }
    }

    private void add(Category category, String item, double quantity, String unit, double perUnit) {
        if (quantity > 0) {
            lines.add(new CostLine(category, item, quantity, unit, perUnit, quantity * perUnit));
        }
    }
}
