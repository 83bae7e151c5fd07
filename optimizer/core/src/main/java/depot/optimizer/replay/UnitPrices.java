package depot.optimizer.replay;

import depot.optimizer.plan.CostLine;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.CrewBase;
import depot.optimizer.scenario.MoveCost;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.SharingUnitType;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Present cost of one of each thing, worked out of the scenario in decimal arithmetic. */
final class UnitPrices {
    private final DepotTables tables;
    private final DecimalMoney money;

    UnitPrices(DepotTables tables) {
        this.tables = tables;
        this.money = DecimalMoney.of(tables.scenario(), tables.phase());
    }

    DecimalMoney money() {
        return money;
    }

    /** A pack: bought now, its stock's worth got back at the end. */
    BigDecimal pack(PackType pack) {
        return pack.price().multiply(money.startFactor().subtract(money.endFactor()), DecimalMoney.DIGITS);
    }

    /** One pack replaced in every year. */
    BigDecimal wear(PackType pack) {
        return pack.price().multiply(money.annuity(), DecimalMoney.DIGITS);
    }

    BigDecimal charger(ChargerType type) {
        return money.lifeCost(type.price(), type.installCost(), type.lifeYears());
    }

    BigDecimal ownedCharger(ChargerType type) {
        return money.ownedLifeCost(type.price(), type.installCost(), type.lifeYears());
    }

    BigDecimal unit(SharingUnitType type) {
        return money.lifeCost(type.price(), type.installCost(), type.lifeYears());
    }

    BigDecimal ownedUnit(SharingUnitType type) {
        return money.ownedLifeCost(type.price(), type.installCost(), type.lifeYears());
    }

    BigDecimal bank(PowerBankType type) {
        return money.lifeCost(type.price(), BigDecimal.ZERO, type.lifeYears());
    }

    BigDecimal ownedBank(PowerBankType type) {
        return money.ownedLifeCost(type.price(), BigDecimal.ZERO, type.lifeYears());
    }

    /** One piece moved from another depot, 0 where no move of it is on offer. */
    BigDecimal move(String item) {
        return tables.scenario().coupling().moves().stream()
                .filter(move -> move.item().equals(item))
                .map(MoveCost::cost)
                .map(this::building)
                .findFirst()
                .orElse(BigDecimal.ZERO);
    }

    /** A circuit or a supply: built when the phase begins, worth nothing at the end. */
    BigDecimal building(BigDecimal cost) {
        return cost.multiply(money.startFactor(), DecimalMoney.DIGITS);
    }

    /** What one unit of a line may cost; empty: the item has no price of its own, its category is compared as a whole. */
    List<BigDecimal> of(CostLine line) {
        String item = line.item();
        return switch (line.category()) {
            case PACKS ->
                one(tables.packTypes().get(item)).map(p -> List.of(pack(p))).orElse(List.of());
            case PACK_WEAR ->
                one(tables.packTypes().get(item)).map(p -> List.of(wear(p))).orElse(List.of());
            case CHARGERS ->
                one(tables.chargerTypes().get(item))
                        .map(c -> List.of(charger(c), ownedCharger(c)))
                        .orElse(List.of());
            case SHARING_UNITS ->
                one(tables.unitTypes().get(item))
                        .map(u -> List.of(unit(u), ownedUnit(u)))
                        .orElse(List.of());
            case POWER_BANKS ->
                one(tables.bankTypes().get(item))
                        .map(b -> List.of(bank(b), ownedBank(b)))
                        .orElse(List.of());
            case CIRCUITS ->
                one(tables.circuits().get(item))
                        .map(c -> List.of(building(c.installCost())))
                        .orElse(List.of());
            case SUPPLY -> List.of(building(tables.depot().supplyUpgradeCost()));
            case MOVES -> List.of(move(item));
            case ENERGY, DEMAND, STANDING, CREW_BASES, PETROL, SHORTAGE -> List.of();
        };
    }

    /** What it costs a crew to work from here over the horizon, 0 when it is not listed. */
    BigDecimal crewBase(String crew) {
        return tables.scenario().crewBases().stream()
                .filter(b ->
                        b.crew().equals(crew) && b.depot().equals(tables.depot().id()))
                .map(CrewBase::costPerYear)
                .map(cost -> cost.multiply(money.annuity(), DecimalMoney.DIGITS))
                .findFirst()
                .orElse(BigDecimal.ZERO);
    }

    /** What a crew's petrol costs over the horizon, 0 for a crew that the depot does not have. */
    BigDecimal petrol(String crew) {
        return one(tables.crews().get(crew))
                .map(c -> c.petrolCostPerYear().multiply(money.annuity(), DecimalMoney.DIGITS))
                .orElse(BigDecimal.ZERO);
    }

    private static <T> Optional<T> one(T value) {
        return Optional.ofNullable(value);
    }
}
