package depot.optimizer.model;

import depot.optimizer.finance.PresentCost;
import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.MoveOffer;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.SharingUnitType;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Present cost of what is bought and of what is paid whatever the days bring, phase by phase.
 *
 * <p>Of each item the first pieces are those owned already: pieces[f] &lt;= owned + pieces that come - pieces that go + bought in the phases up to f.
 * A bought piece costs its whole life's present cost, an owned one only what follows its first purchase, from the phase on in which it is first
 * used. What a phase has, the next one has too: pieces[f] &gt;= pieces[f - 1], and likewise circuits built, the bigger supply and crews with packs.
 * Of what nobody owns a phase buys pieces[f] - pieces[f - 1].
 */
final class PurchaseCosts {

    private final MipModel model;
    private final DepotRollout rollout;
    private final List<CapacityVars> capacities;
    private final RolloutUse use;
    private final Map<String, Item> items = new LinkedHashMap<>();

    /** More pieces of an item than a depot buys. */
    private static final double MOST_BOUGHT = 9999;

    /** Pieces of an item so far: those of the last phase seen, those that came and were bought, and those that were bought. */
    private static final class Item {
        private Expr pieces = new Expr();
        private final Expr available = new Expr();
        private final Expr bought = new Expr();
    }

    private PurchaseCosts(MipModel model, DepotRollout rollout, List<CapacityVars> capacities) {
        this.model = model;
        this.rollout = rollout;
        this.capacities = capacities;
        use = new RolloutUse(rollout.phases().size());
    }

    /**
     * Adds the costs and the rows that join the phases.
     *
     * @param capacities one for each phase
     * @return what the purchases use of what the fleet shares
     */
    static RolloutUse add(MipModel model, DepotRollout rollout, List<CapacityVars> capacities) {
        PurchaseCosts costs = new PurchaseCosts(model, rollout, capacities);
        for (int f = 0; f < capacities.size(); f++) {
            costs.addPhase(f);
        }
        return costs.use;
    }

    private void addPhase(int f) {
        DepotProblem problem = rollout.phases().get(f);
        CapacityVars capacity = capacities.get(f);
        PhaseNames.enter(model, rollout, f);
        for (int m = 0; m < problem.moves().size(); m++) {
            addMove(problem, problem.moves().get(m), capacity.come[m], capacity.go[m]);
        }
        addChargers(f, problem, capacity);
        addUnits(f, problem, capacity);
        addPacks(f, problem, capacity);
        addKits(f, problem, capacity);
        addBuilding(f, problem, capacity);
        addCrews(f, problem, capacity);
        addVisits(f, problem, capacity);
        double annuity = problem.money().electricityAnnuity();
        for (int s = 0; s < capacity.peak.length; s++) {
            Season season = problem.seasons().get(s);
            double months = PresentCost.months(season.weeksPerYear());
            model.cost(problem.tariff().demandPricePerKwMonth() * months * annuity, capacity.peak[s]);
        }
        model.cost(problem.tariff().standingPerDay() * 365.25 * annuity);
        PhaseNames.leave(model, rollout, f);
    }

    private void addMove(DepotProblem problem, MoveOffer offer, Var come, Var go) {
        model.cost(offer.cost() * problem.money().atStart(), come);
        Expr moved = new Expr().add(1, come).add(-1, go);
        item(offer.item(), "").available.add(1, moved);
        use.move(offer.item(), moved);
    }

    private Item item(String type, String owner) {
        return items.computeIfAbsent(type + "/" + owner, key -> new Item());
    }

    private void addBuilding(int f, DepotProblem problem, CapacityVars capacity) {
        double now = problem.money().atStart();
        for (int k = 0; k < problem.circuits().size(); k++) {
            Circuit circuit = problem.circuits().get(k).circuit();
            Var before = f == 0 ? null : capacities.get(f - 1).built[k];
            addOnce(f, "built_" + circuit.id(), circuit.installCost().doubleValue(), now, capacity.built[k], before);
        }
        Var before = f == 0 ? null : capacities.get(f - 1).upgrade;
        addOnce(f, "upgrade", problem.depot().supplyUpgradeCost().doubleValue(), now, capacity.upgrade, before);
    }

    /** Something that is built in one phase and stays. */
    private void addOnce(int f, String key, double price, double now, Var there, Var before) {
        model.cost(price * now, there);
        use.spend(f, price, new Expr().add(1, there));
        if (before != null) {
            model.cost(-price * now, before);
            use.spend(f, -price, new Expr().add(1, before));
            model.atLeast("stays_" + key, new Expr().add(1, there).add(-1, before), 0);
        }
    }

    /** Of what a visiting crew gets its home uses what it counts on, its host minus what it gives. */
    private void addVisits(int f, DepotProblem problem, CapacityVars capacity) {
        for (int i = 0; i < capacity.services.length; i++) {
            use.visit(f, problem.services().get(i).key(), new Expr().add(1, capacity.services[i]));
        }
        for (int i = 0; i < capacity.hosted.length; i++) {
            use.visit(f, problem.guestServices().get(i).key(), new Expr().add(-1, capacity.hosted[i]));
        }
    }

    /** A crew that stays on petrol pays for it every year, at home; a guest spares its home that, and the cost of its base there. */
    private void addCrews(int f, DepotProblem problem, CapacityVars capacity) {
        double annuity = problem.money().annuity();
        for (Crew crew : problem.petrolOnly()) {
            double base = problem.baseCostPerYear().getOrDefault(crew.id(), 0.0);
            model.cost((crew.petrolCostPerYear().doubleValue() + base) * annuity);
        }
        for (int w = 0; w < problem.crews().size(); w++) {
            Crew crew = problem.crews().get(w);
            double base = problem.baseCostPerYear().getOrDefault(crew.id(), 0.0);
            Var electric = capacity.electric[w];
            if (problem.guest(crew.id())) {
                double more = (base - problem.guestSavings().get(crew.id())) * annuity;
                if (electric == null) {
                    model.cost(more);
                } else {
                    model.cost(more, electric);
                }
            } else {
                model.cost(base * annuity);
                if (electric != null) {
                    double petrol = crew.petrolCostPerYear().doubleValue() * annuity;
                    model.cost(petrol);
                    model.cost(-petrol, electric);
                }
            }
            if (electric != null) {
                use.crew(f, crew.id(), electric);
                stays(f, crew.id(), electric);
            }
        }
    }

    private void stays(int f, String crew, Var electric) {
        if (f > 0) {
            List<Crew> before = rollout.phases().get(f - 1).crews();
            for (int w = 0; w < before.size(); w++) {
                Var earlier = capacities.get(f - 1).electric[w];
                if (before.get(w).id().equals(crew) && earlier != null) {
                    model.atLeast(
                            "stays_electric_" + crew,
                            new Expr().add(1, electric).add(-1, earlier),
                            0);
                }
            }
        }
    }

    private void addChargers(int f, DepotProblem problem, CapacityVars capacity) {
        for (int c = 0; c < problem.chargers().size(); c++) {
            ChargerType type = problem.chargers().get(c).type();
            Expr pieces = new Expr();
            for (int k = 0; k < problem.circuits().size(); k++) {
                pieces.add(1, capacity.plain[k][c]).add(1, capacity.shared[k][c]);
            }
            addItem(f, "chargers_" + type.id(), pieces, LifeCost.of(type), "");
        }
    }

    private void addUnits(int f, DepotProblem problem, CapacityVars capacity) {
        for (int u = 0; u < problem.unitTypes().size(); u++) {
            SharingUnitType type = problem.unitTypes().get(u);
            Expr pieces = new Expr();
            for (Var[] circuit : capacity.unit) {
                pieces.add(1, circuit[u]);
            }
            addItem(f, "units_" + type.id(), pieces, LifeCost.of(type), "");
        }
    }

    private void addPacks(int f, DepotProblem problem, CapacityVars capacity) {
        for (int q = 0; q < capacity.packs.length; q++) {
            String pool = problem.pools().get(q);
            String owner = pool.equals(problem.depot().id()) ? "" : pool;
            for (int p = 0; p < capacity.packs[q].length; p++) {
                PackType type = problem.packTypes().get(p);
                addItem(
                        f,
                        "packs_" + pool + "_" + type.id(),
                        new Expr().add(1, capacity.packs[q][p]),
                        new LifeCost(type.id(), type.price(), BigDecimal.ZERO, 0),
                        owner);
            }
        }
    }

    private void addKits(int f, DepotProblem problem, CapacityVars capacity) {
        for (int w = 0; w < problem.crews().size(); w++) {
            String crew = problem.crews().get(w).id();
            for (int t = 0; t < capacity.kit[w].length; t++) {
                ChargerType type = problem.portableChargers().get(t).type();
                Expr pieces = new Expr().add(1, capacity.kit[w][t]);
                addItem(f, "kit_" + crew + "_" + type.id(), pieces, LifeCost.of(type), crew);
            }
            for (int b = 0; b < capacity.banks[w].length; b++) {
                PowerBankType type = problem.bankTypes().get(b);
                Expr pieces = new Expr().add(1, capacity.banks[w][b]);
                addItem(f, "banks_" + crew + "_" + type.id(), pieces, LifeCost.of(type), crew);
            }
        }
    }

    /**
     * What a piece costs.
     *
     * @param lifeYears 0: a pack, whose stock is kept whole
     */
    private record LifeCost(String item, BigDecimal price, BigDecimal install, double lifeYears) {

        static LifeCost of(ChargerType type) {
            return new LifeCost(type.id(), type.price(), type.installCost(), type.lifeYears());
        }

        static LifeCost of(SharingUnitType type) {
            return new LifeCost(type.id(), type.price(), type.installCost(), type.lifeYears());
        }

        static LifeCost of(PowerBankType type) {
            return new LifeCost(type.id(), type.price(), BigDecimal.ZERO, type.lifeYears());
        }

        /** Present cost of one that the phase buys. */
        double bought(PresentCost money) {
            return lifeYears == 0
                    ? money.stockedPack(price.doubleValue())
                    : money.newPiece(price.doubleValue(), install.doubleValue(), lifeYears);
        }

        /** Present cost of one that is there already and first used in the phase. */
        double owned(PresentCost money) {
            return lifeYears == 0 ? 0 : money.ownedPiece(price.doubleValue(), lifeYears);
        }

        double paid() {
            return price.add(install).doubleValue();
        }
    }

    private void addItem(int f, String key, Expr pieces, LifeCost cost, String owner) {
        DepotProblem problem = rollout.phases().get(f);
        Item item = item(cost.item(), owner);
        double owned = cost.owned(problem.money());
        model.cost(owned, pieces);
        model.cost(-owned, item.pieces);
        if (f > 0) {
            model.atLeast("stays_" + key, new Expr().add(1, pieces).add(-1, item.pieces), 0);
        }
        Expr bought;
        if (rollout.phases().size() > 1 && neverOwned(cost.item(), owner)) {
            bought = new Expr().add(1, pieces).add(-1, item.pieces);
        } else {
            bought = new Expr().add(1, model.continuous("bought_" + key, 0, MipModel.INFINITY));
            item.available.add(1, bought);
            item.bought.add(1, bought);
            model.atMost(
                    "owned_" + key,
                    new Expr().add(1, pieces).add(-1, item.available),
                    problem.ownedCount(cost.item(), owner));
            if (rollout.phases().size() > 1) {
                addBoughtIsThere(key, pieces, item, ownedOrComing(problem, cost.item(), owner));
            }
        }
        model.cost(cost.bought(problem.money()) - owned, bought);
        item.pieces = pieces;
        use.buy(f, cost.item(), cost.paid(), bought);
    }

    /**
     * Nothing is bought ahead: either nothing at all so far, or the phase has all that is there or was bought. Otherwise a piece, or a fraction of one,
     * could be bought early, from another phase's budget or to reach a quantity price, which is no purchase that a plan can tell.
     */
    private void addBoughtIsThere(String key, Expr pieces, Item item, int[] there) {
        Var any = model.integer("any_bought_" + key, 0, 1);
        int most = there[0] + there[1];
        model.atMost("none_bought_" + key, new Expr().add(1, item.bought).add(-MOST_BOUGHT, any), 0);
        model.atMost(
                "not_ahead_" + key,
                new Expr().add(1, item.available).add(-1, pieces).add(most, any),
                most - there[0]);
    }

    /** Pieces that the depot owns, and the most that can come from others. */
    private static int[] ownedOrComing(DepotProblem problem, String item, String owner) {
        int coming = problem.moves().stream()
                .filter(offer -> owner.isEmpty() && offer.item().equals(item))
                .mapToInt(MoveOffer::elsewhere)
                .sum();
        return new int[] {problem.ownedCount(item, owner), coming};
    }

    /** Whether what is bought is what a phase has more than the one before: a variable for it could buy a fraction early, from the wrong budget. */
    private boolean neverOwned(String type, String owner) {
        return rollout.phases().stream().allMatch(problem -> problem.ownedCount(type, owner) == 0)
                && rollout.first().moves().stream()
                        .noneMatch(offer -> offer.item().equals(type));
    }
}
