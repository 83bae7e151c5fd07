package depot.optimizer.model;

import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.problem.DepotProblem.MoveOffer;
import depot.optimizer.problem.Visit.Service;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.SharingUnitType;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What is bought, shared by all days. Indices: k circuit, c charger type, u unit type, q pool, p pack type, w crew, t portable charger type, b
 * power-bank type, s season; each in the order of the problem.
 */
public final class CapacityVars {

    /** Chargers of a type on a circuit without a unit, pieces. */
    final Var[][] plain;
    /** Chargers of a type behind the unit of a circuit, pieces. */
    final Var[][] shared;
    /** How many of the latter sit on priority outlets. */
    final Var[][] priority;
    /** 1: the circuit has a unit of the type. */
    final Var[][] unit;
    /** 1: the circuit has a unit of the type with a mix of chargers behind it, by circuit and unit type in the order of {@link #mixes}. */
    final Var[][][] mixed;

    /** What may be behind a unit, by circuit and unit type. */
    final List<List<List<UnitMix>>> mixes = new ArrayList<>();
    /** 1: the circuit is there; fixed for those that exist. */
    final Var[] built;
    /** 1: the bigger supply is bought. */
    final Var upgrade;
    /** Packs of a pool, pieces. */
    final Var[][] packs;
    /** Portable chargers of a crew, pieces. */
    final Var[][] kit;
    /** Power banks of a crew, pieces. */
    final Var[][] banks;
    /** Outlets of a plain circuit that recharge power banks of a type. */
    final Var[][] bankPlugs;
    /** 1: the crew works from here with packs, 0: it stays on petrol or works from another depot; null for a crew that has no choice. */
    final Var[] electric;
    /** Owned pieces that come from other depots, and those that go there, for each of the problem's offers. */
    final Var[] come;

    final Var[] go;
    /** Packs that the depot's crews count on getting charged on a visit, for each of the problem's services. */
    final Var[] services;
    /** Packs of guests that the depot charges, for each of the problem's services for guests. */
    final Var[] hosted;
    /** Demand above the base load's that is paid for in a season, kW. */
    final Var[] peak;

    /** By how much limits are loosened; all zero in a plan. */
    final Relief relief;

    /** Most chargers of a type on a circuit whose limits are loosened. */
    private static final int MOST_LOOSENED = 99;

    private final MipModel model;
    private final double[] fixed;
    private final double peakRoom;
    private final boolean loosened;
    private final List<Var> all = new ArrayList<>();

    /**
     * Variables that the solver chooses.
     *
     * @param open limits that may be loosened; none for a plan
     */
    public static CapacityVars relaxed(MipModel model, DepotProblem problem, Set<LimitKind> open) {
        return new CapacityVars(model, problem, new double[0], 0, open);
    }

    /** Pieces fixed at values in the order of {@link #all()}, while the demand paid for may rise above its values. */
    public static CapacityVars held(MipModel model, DepotProblem problem, double[] values) {
        double room = problem.tariff().billsDemand() ? MipModel.INFINITY : 0;
        return new CapacityVars(model, problem, values, room, Set.of());
    }

    private CapacityVars(MipModel model, DepotProblem problem, double[] fixed, double peakRoom, Set<LimitKind> open) {
        relief = new Relief(model, problem, open);
        this.model = model;
        this.fixed = fixed;
        this.peakRoom = peakRoom;
        loosened = open.contains(LimitKind.BREAKER) || open.contains(LimitKind.OUTLETS);
        int circuits = problem.circuits().size();
        List<ChargerOption> chargers = problem.chargers();
        List<SharingUnitType> units = problem.unitTypes();
        List<PowerBankType> bankTypes = problem.bankTypes();
        plain = new Var[circuits][chargers.size()];
        shared = new Var[circuits][chargers.size()];
        priority = new Var[circuits][chargers.size()];
        mixed = new Var[circuits][units.size()][];
        unit = new Var[circuits][units.size()];
        bankPlugs = new Var[circuits][bankTypes.size()];
        built = new Var[circuits];
        for (int k = 0; k < circuits; k++) {
            declareCircuit(problem, k, chargers, units, bankTypes);
        }
        upgrade = declare("upgrade", problem.depot().upgradeOffered() ? 1 : 0, 0);
        List<String> pools = problem.pools();
        packs = new Var[pools.size()][problem.packTypes().size()];
        for (int q = 0; q < pools.size(); q++) {
            for (int p = 0; p < packs[q].length; p++) {
                packs[q][p] = declare(
                        "packs_" + pools.get(q) + "_"
                                + problem.packTypes().get(p).id(),
                        9999,
                        0);
            }
        }
        int crews = problem.crews().size();
        kit = new Var[crews][problem.portableChargers().size()];
        banks = new Var[crews][bankTypes.size()];
        for (int w = 0; w < crews; w++) {
            declareCrew(problem, w);
        }
        electric = new Var[crews];
        for (int w = 0; w < crews; w++) {
            String crew = problem.crews().get(w).id();
            electric[w] = problem.choice().contains(crew) ? declare("electric_" + crew, 1, 0) : null;
        }
        come = new Var[problem.moves().size()];
        go = new Var[come.length];
        for (int m = 0; m < come.length; m++) {
            MoveOffer offer = problem.moves().get(m);
            come[m] = declare("come_" + offer.item(), offer.elsewhere(), 0);
            go[m] = declare("go_" + offer.item(), offer.here(), 0);
        }
        services = declareServices("visit", problem.services());
        hosted = declareServices("host", problem.guestServices());
        peak = new Var[problem.seasons().size()];
        for (int s = 0; s < peak.length; s++) {
            peak[s] = declareContinuous(
                    "peak_" + problem.seasons().get(s).id(), problem.tariff().billsDemand() ? MipModel.INFINITY : 0);
        }
    }

    private Var[] declareServices(String quantity, List<Service> of) {
        Var[] vars = new Var[of.size()];
        for (int i = 0; i < vars.length; i++) {
            String key = of.get(i).key().replace(' ', '_');
            vars[i] = declare(quantity + "_" + key, of.get(i).visit().packPlaces(), 0);
        }
        return vars;
    }

    private void declareCircuit(
            DepotProblem problem,
            int k,
            List<ChargerOption> chargers,
            List<SharingUnitType> units,
            List<PowerBankType> bankTypes) {
        CircuitSite site = problem.circuits().get(k);
        String id = site.circuit().id();
        built[k] = declare("built_" + id, 1, site.circuit().candidate() ? 0 : 1);
        int unitOutlets =
                units.stream().mapToInt(SharingUnitType::outlets).max().orElse(0);
        int unitPriority =
                units.stream().mapToInt(SharingUnitType::priorityOutlets).max().orElse(0);
        for (int c = 0; c < chargers.size(); c++) {
            String key = id + "_" + chargers.get(c).type().id();
            double amps = chargers.get(c).type().plateWatts() / site.wattsPerAmp();
            boolean plugs = amps <= site.plugAmps() + 1e-9;
            double usable = loosened ? Double.MAX_VALUE : site.usableAmps(site.peakBaseAmps());
            double most = plugs ? Math.floor(usable / amps + 1e-9) : 0;
            int bound = loosened && most > 0
                    ? MOST_LOOSENED
                    : (int) Math.min(most, site.circuit().outlets());
            plain[k][c] = declare("plain_" + key, bound, 0);
            boolean fits = UnitMix.fits(problem, site, c);
            shared[k][c] = declare("shared_" + key, fits ? unitOutlets : 0, 0);
            priority[k][c] = declare("priority_" + key, fits ? unitPriority : 0, 0);
        }
        List<List<UnitMix>> ofUnits = new ArrayList<>();
        for (int u = 0; u < units.size(); u++) {
            String key = id + "_" + units.get(u).id();
            unit[k][u] = declare("unit_" + key, 1, 0);
            List<UnitMix> mixesOf = UnitMix.of(problem, k, u);
            mixed[k][u] = new Var[mixesOf.size()];
            for (int m = 0; m < mixesOf.size(); m++) {
                mixed[k][u][m] = declare("mixed" + m + "_" + key, 1, 0);
            }
            ofUnits.add(mixesOf);
        }
        mixes.add(ofUnits);
        for (int b = 0; b < bankTypes.size(); b++) {
            boolean fits = bankTypes.get(b).rechargeWatts() / site.wattsPerAmp() <= site.plugAmps() + 1e-9;
            bankPlugs[k][b] = declare(
                    "bankPlugs_" + id + "_" + bankTypes.get(b).id(),
                    fits ? site.circuit().outlets() : 0,
                    0);
        }
    }

    private void declareCrew(DepotProblem problem, int w) {
        String crew = problem.crews().get(w).id();
        boolean roadPower = RoadPower.reaches(problem, crew);
        for (int t = 0; t < kit[w].length; t++) {
            kit[w][t] = declare(
                    "kit_" + crew + "_"
                            + problem.portableChargers().get(t).type().id(),
                    roadPower ? 9 : 0,
                    0);
        }
        for (int b = 0; b < banks[w].length; b++) {
            PowerBankType type = problem.bankTypes().get(b);
            boolean useful = problem.portableChargers().size() > 0 && RoadPower.rechargeable(problem, crew, type);
            banks[w][b] = declare("banks_" + crew + "_" + type.id(), useful ? 9 : 0, 0);
        }
    }

    private Var declare(String name, int most, int least) {
        int i = all.size();
        Var var = fixed.length > 0
                ? model.continuous(name, fixed[i], fixed[i])
                : model.integer(name, least, Math.max(least, most));
        all.add(var);
        return var;
    }

    private Var declareContinuous(String name, double most) {
        int i = all.size();
        Var var = fixed.length > 0
                ? model.continuous(name, fixed[i], Math.max(fixed[i], peakRoom))
                : model.continuous(name, 0, most);
        all.add(var);
        return var;
    }

    /** Whether a variable is counted in pieces, by its place in {@link #all()}; peaks are not, and come last. */
    public boolean isWhole(int place) {
        return place < all.size() - peak.length;
    }

    /** Those that say whether a crew works from here with packs, of crews that have a choice. */
    public List<Var> crews() {
        return Stream.of(electric).filter(Objects::nonNull).toList();
    }

    /** By how much limits are loosened. */
    public Relief relief() {
        return relief;
    }

    /** Packs of each pool and pack type. */
    public Var[][] packs() {
        return packs;
    }

    /** Every variable, in a fixed order. */
    public List<Var> all() {
        return List.copyOf(all);
    }
}
