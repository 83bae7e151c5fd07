package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.DayKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The decisions of one kind of day.
 *
 * @param tag makes the day's names unique in a model
 * @param fillings of batches that packs of several kinds share in turns while the price changes; for the others turns are enough
 * @param energy what waiting chargers draw behind the unit of each circuit in each slice, Wh; indices circuit, slice; empty without unit types
 * @param draws what each slice draws for charging; empty without a demand charge
 * @param recourseCost present cost of running the day as often as it occurs: energy, shortage
 * @param cycles charges of each pack type a year
 */
public record DayVars(
        DayKind kind,
        String tag,
        List<TripVars> trips,
        List<Batch> batches,
        Map<BatchSpan, List<Load>> loads,
        Map<BatchSpan, List<Filling>> fillings,
        Var[][] energy,
        List<Draw> draws,
        Expr recourseCost,
        List<Expr> cycles) {

    /**
     * Draw for charging in one slice.
     *
     * @param kw for charging
     * @param room that it may fill before it adds to what the base load alone is billed for, kW
     */
    record Draw(Expr kw, double room) {}

    /** Packs on board of every trip, full and at 80 %. */
    public List<Var> carriedPacks() {
        List<Var> packs = new ArrayList<>();
        for (TripVars trip : trips) {
            for (TripVars.Carried carried : trip.carried()) {
                packs.add(carried.full());
                packs.add(carried.eighty());
            }
        }
        return packs;
    }

    /** Energy that trips do without, Wh. */
    public List<Var> shortages() {
        return trips.stream().flatMap(trip -> trip.shortWh().stream()).toList();
    }

    /** Chargers that are loaded, of each batch. */
    public List<Var> loadedChargers() {
        return batches.stream().map(Batch::chargers).toList();
    }

    /** Loads of all batches. */
    List<Load> allLoads() {
        return loads.values().stream().flatMap(List::stream).toList();
    }

    /** End of the cycle. */
    int end() {
        return kind.handovers().get(kind.handovers().size() - 1);
    }
}
