package depot.optimizer.check;

import java.util.List;

/** Every rule between cells, rows and tables; what a single cell may hold is declared in the dictionary. */
final class Rules {
    static final List<Rule> ALL = List.of(
            TableRules::rows,
            TableRules::references,
            KeyRules::unique,
            SeasonRules::weeks,
            DepotRules::staffedHours,
            DepotRules::supplyUpgrade,
            DepotRules::position,
            DepotRules::inUse,
            DepotRules::circuitFitsSupply,
            BaseLoadRules::spans,
            BaseLoadRules::circuitOfDepot,
            BaseLoadRules::withinRating,
            BaseLoadRules::overlaps,
            EquipmentRules::bays,
            EquipmentRules::priorityOutlets,
            EquipmentRules::timesRise,
            EquipmentRules::packsAndChargersFit,
            EquipmentRules::packForEachTool,
            EquipmentRules::somewhereToPlug,
            EquipmentRules::itemKeys,
            ChargeDrawRules::withinPlatePower,
            BankRules::rechargeFills,
            BankRules::feedsACharger,
            RouteRules::beginsAndEndsAtDepot,
            RouteRules::blankTimes,
            RouteRules::timesRise,
            RouteRules::beginsBeforeMidnight,
            RouteRules::tripsGoSomewhere,
            CycleRules::backBeforeNextDay,
            StopRules::depotStops,
            StopRules::basesElsewhere,
            StopRules::crewsWithStops,
            WorkRules::stopIsMade,
            WorkRules::notAtOwnDepot,
            WorkRules::withinStop,
            WorkRules::turnsWithinStop,
            TariffRules::spans,
            TariffRules::cover,
            TariffRules::used,
            OwnedRules::knownItems,
            OwnedRules::sameDepot,
            OwnedRules::holders,
            OwnedRules::fitOnCircuit,
            FinanceRules::yearsWithoutGap,
            FinanceRules::sharesAddToOne,
            FinanceRules::scheduleIsThere,
            FinanceRules::schedulesAreUsed,
            FinanceRules::carbonOfElectricity);

    private Rules() {}
}
