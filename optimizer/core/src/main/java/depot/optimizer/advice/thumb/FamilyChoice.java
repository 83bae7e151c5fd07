package depot.optimizer.advice.thumb;

import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.ChargerOption.Fit;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is bought for one pack family: one pack type, one charger for the night and one for lunch.
 *
 * @param pack the type with the most energy, so that packs are changed least often; types that a charger of the depot takes go first
 * @param night the charger that is cheapest per bay, empty: none takes the pack
 * @param lunch the charger that fills the pack soonest, empty: none takes it
 */
record FamilyChoice(PackType pack, Optional<ChargerOption> night, Optional<ChargerOption> lunch) {

    /** The choice for a family; empty: the tables have no pack of it. */
    static Optional<FamilyChoice> of(DepotProblem problem, String family) {
        return problem.packTypes().stream()
                .filter(type -> type.family().equals(family))
                .max(Comparator.comparing(
                                (PackType type) -> !chargersOf(problem, type).isEmpty())
                        .thenComparingDouble(type -> type.capacityWh() * type.usableShare())
                        .thenComparing(type -> type.price().negate()))
                .map(type -> of(problem, type));
    }

    private static FamilyChoice of(DepotProblem problem, PackType pack) {
        List<ChargerOption> chargers = chargersOf(problem, pack);
        return new FamilyChoice(
                pack,
                chargers.stream().min(Comparator.comparing(FamilyChoice::pricePerBay)),
                chargers.stream()
                        .min(Comparator.comparingInt((ChargerOption option) ->
                                        fit(option, pack).orElseThrow().minutesToFull())
                                .thenComparing(FamilyChoice::pricePerBay)));
    }

    private static List<ChargerOption> chargersOf(DepotProblem problem, PackType pack) {
        return problem.chargers().stream()
                .filter(option -> fit(option, pack).isPresent())
                .toList();
    }

    /** How a charger takes a pack; empty: it does not. */
    static Optional<Fit> fit(ChargerOption option, PackType pack) {
        return option.fits().stream().filter(fit -> fit.pack().equals(pack)).findFirst();
    }

    private static BigDecimal pricePerBay(ChargerOption option) {
        ChargerType type = option.type();
        return type.price().add(type.installCost()).divide(BigDecimal.valueOf(type.bays()), MathContext.DECIMAL64);
    }
}
