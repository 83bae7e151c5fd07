package depot.optimizer.finance;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
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

/** Lists what a depot's plan pays for, line by line. */
public final class DepotCosts {

    private final DepotPrices prices;
    private final List<PricedLine> lines = new ArrayList<>();

    private DepotCosts(DepotPrices prices) {
        this.prices = prices;
    }

    /** What a plan pays for; the cost lines that it has already do not matter. Lines of nothing are left out. */
    public static List<PricedLine> of(DepotPrices prices, DepotPlan plan) {
        DepotCosts book = new DepotCosts(prices);
        book.addPacks(plan.packs());
        book.addChargers(plan.chargers(), plan.kits());
        book.addUnits(plan.units());
        book.addBuilding(plan.circuitsBuilt(), plan.supplyUpgraded());
        book.addDays(plan.days());
        book.addPetrol(plan.onPetrol());
        return List.copyOf(book.lines);
    }

    private void addPacks(List<PackStock> stocks) {
        for (PackType type : prices.packTypes()) {
            double price = type.price().doubleValue();
            List<PackStock> ofType =
                    stocks.stream().filter(s -> s.packType().equals(type.id())).toList();
            int bought = ofType.stream().mapToInt(s -> s.count() - s.owned()).sum();
            double replaced =
                    ofType.stream().mapToDouble(PackStock::replacedPerYear).sum();
            add(Category.PACKS, type.id(), bought, "piece", new Outlay.StockedPack(price));
            add(Category.PACK_WEAR, type.id(), replaced, "piece/year", new Outlay.EveryYear(price));
        }
    }

    private void addChargers(List<ChargerPlacement> placed, List<CrewKit> kits) {
        for (ChargerType type : prices.chargerTypes()) {
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
                    piece(type.price(), type.installCost(), type.lifeYears()));
        }
        for (PowerBankType type : prices.bankTypes()) {
            addPieces(
                    Category.POWER_BANKS,
                    type.id(),
                    kitCount(kits, type.id()),
                    kitOwned(kits, type.id()),
                    piece(type.price(), BigDecimal.ZERO, type.lifeYears()));
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

    private void addUnits(List<UnitPlacement> units) {
        for (SharingUnitType type : prices.unitTypes()) {
            List<UnitPlacement> ofType =
                    units.stream().filter(u -> u.unitType().equals(type.id())).toList();
            long owned = ofType.stream().filter(UnitPlacement::owned).count();
            addPieces(
                    Category.SHARING_UNITS,
                    type.id(),
                    ofType.size(),
                    owned,
                    piece(type.price(), type.installCost(), type.lifeYears()));
        }
    }

    private static Outlay.Piece piece(BigDecimal price, BigDecimal installCost, double lifeYears) {
        return new Outlay.Piece(price.doubleValue(), installCost.doubleValue(), lifeYears);
    }

    private void addPieces(Category category, String item, long all, long owned, Outlay.Piece piece) {
        add(category, item, (int) (all - owned), "piece", piece);
        add(category, item, (int) owned, "owned piece", new Outlay.OwnedPiece(piece.price(), piece.lifeYears()));
    }

    private void addBuilding(List<String> circuitsBuilt, boolean upgraded) {
        for (Circuit circuit : prices.circuits()) {
            if (circuitsBuilt.contains(circuit.id())) {
                double cost = circuit.installCost().doubleValue();
                add(Category.CIRCUITS, circuit.id(), 1, "piece", new Outlay.Building(cost));
            }
        }
        if (upgraded) {
            double cost = prices.depot().supplyUpgradeCost().doubleValue();
            add(Category.SUPPLY, prices.depot().id(), 1, "piece", new Outlay.Building(cost));
        }
    }

    private void addDays(List<DayPlan> days) {
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
        String tariff = prices.depot().tariff();
        kwhByPrice.forEach((price, kwh) -> add(
                Category.ENERGY,
                tariff + " at " + price.toPlainString(),
                kwh,
                "kWh/year",
                new Outlay.Electricity(price.doubleValue())));
        for (Season season : prices.seasons()) {
            double price = prices.demandPricePerKwMonth() * PresentCost.months(season.weeksPerYear());
            double demandKw = demandBySeason.getOrDefault(season.id(), 0.0);
            add(Category.DEMAND, season.id(), demandKw, "kW", new Outlay.Electricity(price));
        }
        if (prices.standingPerDay() > 0) {
            add(Category.STANDING, tariff, 365.25, "day/year", new Outlay.Electricity(prices.standingPerDay()));
        }
        String depot = prices.depot().id();
        add(Category.CREW_BASES, depot, prices.crewBaseCostPerYear(), "a year", new Outlay.EveryYear(1));
        add(Category.SHORTAGE, depot, shortKwh, "kWh/year", new Outlay.EveryYear(prices.shortagePerKwh()));
    }

    private void addPetrol(List<String> crews) {
        for (Crew crew : prices.crews()) {
            if (crews.contains(crew.id())) {
                double cost = crew.petrolCostPerYear().doubleValue();
                add(Category.PETROL, crew.id(), cost, "a year", new Outlay.EveryYear(1));
            }
        }
    }

    private void add(Category category, String item, double quantity, String unit, Outlay outlay) {
        if (quantity > 0) {
            lines.add(new PricedLine(PricedLine.NOW, category, item, quantity, unit, outlay));
        }
    }
}
