package depot.optimizer.finance;

import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.plan.MovedPieces;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.TripPlan;
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
import java.util.Optional;
import java.util.TreeMap;

/** Lists what a depot's plan pays for in its phase, line by line: pieces that the phase before had are paid for. */
public final class DepotCosts {

    private final DepotPrices prices;
    private final int phase;
    private final DepotPlan plan;
    private final Optional<DepotPlan> before;
    private final List<PricedLine> lines = new ArrayList<>();

    private DepotCosts(DepotPrices prices, int phase, DepotPlan plan, Optional<DepotPlan> before) {
        this.prices = prices;
        this.phase = phase;
        this.plan = plan;
        this.before = before;
    }

    /**
     * What a plan pays for; the cost lines that it has already do not matter. Lines of nothing are left out.
     *
     * @param phase number of the plan's phase, from 1
     * @param before the depot's plan for the phase before
     */
    public static List<PricedLine> of(DepotPrices prices, int phase, DepotPlan plan, Optional<DepotPlan> before) {
        DepotCosts book = new DepotCosts(prices, phase, plan, before);
        book.addPacks();
        book.addChargers();
        book.addUnits();
        book.addBuilding();
        book.addMoves();
        book.addDays(plan.days());
        book.addPetrol(plan.onPetrol());
        return List.copyOf(book.lines);
    }

    private void addPacks() {
        for (PackType type : prices.packTypes()) {
            double price = type.price().doubleValue();
            List<PackStock> ofType = plan.packs().stream()
                    .filter(s -> s.packType().equals(type.id()))
                    .toList();
            int bought = ofType.stream().mapToInt(s -> s.count() - s.owned()).sum();
            double replaced =
                    ofType.stream().mapToDouble(PackStock::replacedPerYear).sum();
            add(Category.PACKS, type.id(), bought, "piece", new Outlay.StockedPack(price));
            add(Category.PACK_WEAR, type.id(), replaced, "piece/year", new Outlay.EveryYear(price));
        }
    }

    private void addChargers() {
        for (ChargerType type : prices.chargerTypes()) {
            addPieces(
                    Category.CHARGERS,
                    type.id(),
                    PieceCount.chargers(plan, type.id()),
                    PieceCount.ofBefore(before, earlier -> PieceCount.chargers(earlier, type.id())),
                    piece(type.price(), type.installCost(), type.lifeYears()));
        }
        for (PowerBankType type : prices.bankTypes()) {
            addPieces(
                    Category.POWER_BANKS,
                    type.id(),
                    PieceCount.carried(plan, type.id()),
                    PieceCount.ofBefore(before, earlier -> PieceCount.carried(earlier, type.id())),
                    piece(type.price(), BigDecimal.ZERO, type.lifeYears()));
        }
    }

    private void addUnits() {
        for (SharingUnitType type : prices.unitTypes()) {
            addPieces(
                    Category.SHARING_UNITS,
                    type.id(),
                    PieceCount.units(plan, type.id()),
                    PieceCount.ofBefore(before, earlier -> PieceCount.units(earlier, type.id())),
                    piece(type.price(), type.installCost(), type.lifeYears()));
        }
    }

    private static Outlay.Piece piece(BigDecimal price, BigDecimal installCost, double lifeYears) {
        return new Outlay.Piece(price.doubleValue(), installCost.doubleValue(), lifeYears);
    }

    /** Of the owned pieces those that the phase before had not in use either. */
    private void addPieces(Category category, String item, PieceCount count, int usedBefore, Outlay.Piece piece) {
        add(category, item, count.all() - count.owned(), "piece", piece);
        add(
                category,
                item,
                count.owned() - usedBefore,
                "owned piece",
                new Outlay.OwnedPiece(piece.price(), piece.lifeYears()));
    }

    private void addBuilding() {
        List<String> builtBefore = before.map(DepotPlan::circuitsBuilt).orElse(List.of());
        for (Circuit circuit : prices.circuits()) {
            if (plan.circuitsBuilt().contains(circuit.id()) && !builtBefore.contains(circuit.id())) {
                double cost = circuit.installCost().doubleValue();
                add(Category.CIRCUITS, circuit.id(), 1, "piece", new Outlay.Building(cost));
            }
        }
        if (plan.supplyUpgraded() && !before.map(DepotPlan::supplyUpgraded).orElse(false)) {
            double cost = prices.depot().supplyUpgradeCost().doubleValue();
            add(Category.SUPPLY, prices.depot().id(), 1, "piece", new Outlay.Building(cost));
        }
    }

    private void addMoves() {
        for (MovedPieces moved : plan.moves()) {
            double cost = prices.moveCosts().getOrDefault(moved.item(), 0.0);
            add(Category.MOVES, moved.item(), moved.count(), "piece", new Outlay.Building(cost));
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
        double bases = prices.crews().stream()
                .filter(crew -> crew.depot().equals(depot)
                        ? !plan.away().contains(crew.id())
                        : plan.guests().contains(crew.id()))
                .mapToDouble(crew -> prices.baseCostPerYear().getOrDefault(crew.id(), 0.0))
                .sum();
        add(Category.CREW_BASES, depot, bases, "a year", new Outlay.EveryYear(1));
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
            lines.add(new PricedLine(phase, category, item, quantity, unit, outlay));
        }
    }
}
