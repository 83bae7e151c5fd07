package depot.optimizer.replay;

import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.plan.PackStock;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.SharingUnitType;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Present cost of a depot's plan in its phase by category: quantities of the plan, prices of the scenario. */
final class ExpectedCosts {
    private static final BigDecimal DAYS_PER_YEAR = new BigDecimal("365.25");

    private final DepotTables tables;
    private final DepotPlan plan;
    private final EarlierPhases earlier;
    private final UnitPrices prices;
    private final Map<Category, BigDecimal> costs = new EnumMap<>(Category.class);

    ExpectedCosts(DepotTables tables, DepotPlan plan, EarlierPhases earlier, UnitPrices prices) {
        this.tables = tables;
        this.plan = plan;
        this.earlier = earlier;
        this.prices = prices;
    }

    /** Categories that cost nothing are left out. Shortages that have no price are, too. */
    Map<Category, BigDecimal> byCategory() {
        plan.packs().forEach(this::packs);
        pieces();
        plan.circuitsBuilt().stream()
                .filter(circuit -> !earlier.built(circuit))
                .map(tables.circuits()::get)
                .flatMap(c -> Optional.ofNullable(c).stream())
                .map(Circuit::installCost)
                .forEach(cost -> add(Category.CIRCUITS, prices.building(cost)));
        if (plan.supplyUpgraded() && !earlier.upgraded()) {
            add(Category.SUPPLY, prices.building(tables.depot().supplyUpgradeCost()));
        }
        plan.moves().stream()
                .filter(moved -> moved.count() > 0)
                .forEach(moved -> add(Category.MOVES, times(prices.move(moved.item()), moved.count())));
        plan.days().forEach(this::energy);
        demandAndStanding();
        tables.crews().keySet().forEach(crew -> add(Category.CREW_BASES, prices.crewBase(crew)));
        tables.onPetrol().forEach(crew -> add(Category.PETROL, prices.petrol(crew)));
        tables.scenario().shortageCostPerKwh().ifPresent(price -> plan.days().forEach(day -> shortage(day, price)));
        return costs;
    }

    private void add(Category category, BigDecimal cost) {
        if (cost.signum() != 0) {
            costs.merge(category, cost, (a, b) -> a.add(b, DecimalMoney.DIGITS));
        }
    }

    private static BigDecimal times(BigDecimal cost, double quantity) {
        return cost.multiply(BigDecimal.valueOf(quantity), DecimalMoney.DIGITS);
    }

    private void packs(PackStock stock) {
        PackType type = tables.packTypes().get(stock.packType());
        if (type != null) {
            add(Category.PACKS, times(prices.pack(type), stock.count() - stock.owned()));
            add(Category.PACK_WEAR, times(prices.wear(type), stock.replacedPerYear()));
        }
    }

    /** Chargers, units and banks: bought ones in full, owned ones when they are first used. */
    private void pieces() {
        Map<String, Stock> stocks = Stock.pieces(plan);
        stocks.forEach((item, stock) -> {
            ChargerType charger = tables.chargerTypes().get(item);
            SharingUnitType unit = tables.unitTypes().get(item);
            PowerBankType bank = tables.bankTypes().get(item);
            int bought = stock.count() - stock.owned();
            int firstUsed = Math.max(0, stock.owned() - earlier.pieces(item));
            if (charger != null) {
                add(Category.CHARGERS, times(prices.charger(charger), bought));
                add(Category.CHARGERS, times(prices.ownedCharger(charger), firstUsed));
            } else if (unit != null) {
                add(Category.SHARING_UNITS, times(prices.unit(unit), bought));
                add(Category.SHARING_UNITS, times(prices.ownedUnit(unit), firstUsed));
            } else if (bank != null) {
                add(Category.POWER_BANKS, times(prices.bank(bank), bought));
                add(Category.POWER_BANKS, times(prices.ownedBank(bank), firstUsed));
            }
        });
    }

    private void energy(DayPlan day) {
        BigDecimal annuity = prices.money().growingAnnuity();
        for (EnergyUse use : day.energy()) {
            BigDecimal daily = use.pricePerKwh().multiply(BigDecimal.valueOf(use.kwh()), DecimalMoney.DIGITS);
            add(Category.ENERGY, times(daily, day.daysPerYear()).multiply(annuity, DecimalMoney.DIGITS));
        }
    }

    private void demandAndStanding() {
        BigDecimal annuity = prices.money().growingAnnuity();
        tables.terms().ifPresent(terms -> {
            for (Season season : tables.seasons().values()) {
                double highest = plan.days().stream()
                        .filter(day -> day.occurrences().stream()
                                .anyMatch(o -> o.season().equals(season.id())))
                        .mapToDouble(DayPlan::demandKw)
                        .max()
                        .orElse(0);
                BigDecimal months = BigDecimal.valueOf(season.weeksPerYear())
                        .multiply(BigDecimal.valueOf(7 * 12))
                        .divide(DAYS_PER_YEAR, DecimalMoney.DIGITS);
                BigDecimal yearly = terms.demandPricePerKwMonth().multiply(months, DecimalMoney.DIGITS);
                add(Category.DEMAND, times(yearly, highest).multiply(annuity, DecimalMoney.DIGITS));
            }
            BigDecimal standing = terms.standingPerDay().multiply(DAYS_PER_YEAR);
            add(Category.STANDING, standing.multiply(annuity, DecimalMoney.DIGITS));
        });
    }

    private void shortage(DayPlan day, BigDecimal pricePerKwh) {
        double wattHours = day.trips().stream()
                .flatMap(trip -> trip.shortages().stream())
                .mapToDouble(s -> s.wattHours())
                .sum();
        BigDecimal yearly = times(pricePerKwh, wattHours / 1000 * day.daysPerYear());
        add(Category.SHORTAGE, yearly.multiply(prices.money().annuity(), DecimalMoney.DIGITS));
    }
}
