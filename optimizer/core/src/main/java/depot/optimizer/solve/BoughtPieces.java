package depot.optimizer.solve;

import depot.optimizer.model.CapacityDecision;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.MovedPieces;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.problem.Visit.Service;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.SharingUnitType;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Reads a plan's pieces back into the decision that they came from: the other way round from {@link Placement}. */
final class BoughtPieces {

    private final DepotProblem problem;
    private final DepotPlan plan;

    private final Map<String, Integer> visits;

    private BoughtPieces(DepotProblem problem, DepotPlan plan, Map<String, Integer> visits) {
        this.problem = problem;
        this.plan = plan;
        this.visits = visits;
    }

    /**
     * What a plan of the same depot has bought; pieces that the problem does not know are left out.
     *
     * @param visits packs that the depot's crews count on elsewhere, and that it charges for guests, by {@link Service#key()}; none where it has no entry
     */
    static CapacityDecision of(DepotProblem problem, DepotPlan plan, Map<String, Integer> visits) {
        return new BoughtPieces(problem, plan, visits).decision();
    }

    private CapacityDecision decision() {
        return new CapacityDecision(
                chargers(charger -> !charger.shared()),
                chargers(ChargerPlacement::shared),
                chargers(charger -> charger.shared() && charger.priority()),
                problem.circuits().stream().map(this::unit).toList(),
                problem.circuits().stream().map(this::built).toList(),
                plan.supplyUpgraded(),
                table(problem.pools(), Function.identity(), problem.packTypes(), PackType::id, this::packs),
                table(problem.crews(), Crew::id, problem.portableChargers(), BoughtPieces::id, this::kit),
                table(problem.crews(), Crew::id, problem.bankTypes(), PowerBankType::id, this::kit),
                table(problem.circuits(), BoughtPieces::id, problem.bankTypes(), PowerBankType::id, this::plugs),
                problem.crews().stream().map(this::worksHere).toList(),
                packs(problem.services()),
                packs(problem.guestServices()),
                problem.moves().stream()
                        .map(offer -> plan.moves().stream()
                                .filter(moved -> moved.item().equals(offer.item()))
                                .mapToInt(MovedPieces::count)
                                .sum())
                        .toList());
    }

    private List<Integer> packs(List<Service> services) {
        return services.stream()
                .map(service -> visits.getOrDefault(service.key(), 0))
                .toList();
    }

    private boolean worksHere(Crew crew) {
        return problem.guest(crew.id())
                ? plan.guests().contains(crew.id())
                : !plan.onPetrol().contains(crew.id()) && !plan.away().contains(crew.id());
    }

    private static String id(ChargerOption option) {
        return option.type().id();
    }

    private static String id(CircuitSite site) {
        return site.circuit().id();
    }

    private List<List<Integer>> chargers(Predicate<ChargerPlacement> which) {
        List<ChargerPlacement> chosen = plan.chargers().stream().filter(which).toList();
        return table(
                problem.circuits(),
                BoughtPieces::id,
                problem.chargers(),
                BoughtPieces::id,
                (circuit, type) -> (int) chosen.stream()
                        .filter(charger -> charger.circuit().equals(circuit)
                                && charger.chargerType().equals(type))
                        .count());
    }

    private int unit(CircuitSite site) {
        List<SharingUnitType> types = problem.unitTypes();
        return IntStream.range(0, types.size())
                .filter(u -> plan.units().stream()
                        .anyMatch(unit -> unit.circuit().equals(site.circuit().id())
                                && unit.unitType().equals(types.get(u).id())))
                .findFirst()
                .orElse(-1);
    }

    private boolean built(CircuitSite site) {
        return !site.circuit().candidate()
                || plan.circuitsBuilt().contains(site.circuit().id());
    }

    private int packs(String pool, String type) {
        return plan.packs().stream()
                .filter(stock -> stock.pool().equals(pool) && stock.packType().equals(type))
                .mapToInt(stock -> stock.count())
                .sum();
    }

    private int kit(String crew, String item) {
        return plan.kits().stream()
                .filter(kit -> kit.crew().equals(crew) && kit.item().equals(item))
                .mapToInt(kit -> kit.count())
                .sum();
    }

    private int plugs(String circuit, String type) {
        return (int) plan.banks().stream()
                .filter(bank ->
                        bank.circuit().equals(circuit) && bank.bankType().equals(type))
                .count();
    }

    /** How many of one thing another has, by their ids. */
    private interface Count {
        int of(String row, String column);
    }

    private static <R, C> List<List<Integer>> table(
            List<R> rows, Function<R, String> rowId, List<C> columns, Function<C, String> columnId, Count count) {
        return rows.stream()
                .map(row -> columns.stream()
                        .map(column -> count.of(rowId.apply(row), columnId.apply(column)))
                        .toList())
                .toList();
    }
}
