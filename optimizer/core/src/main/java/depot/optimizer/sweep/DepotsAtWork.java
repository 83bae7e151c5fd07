package depot.optimizer.sweep;

import depot.optimizer.fleet.DepotResult;
import depot.optimizer.fleet.OpenDepot;
import depot.optimizer.fleet.OpenDepots;
import depot.optimizer.fleet.OpenDepots.Aim;
import depot.optimizer.plan.Certificate;
import depot.optimizer.solve.NoPlanException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/** Depots of a fleet that shares nothing, on their way side by side: each has a first plan, then the widest open are worked on until the gap of the fleet is closed. */
final class DepotsAtWork {

    private final double gap;
    private final Aim aim;
    private final Certificate others;
    private final Workshop workshop;
    private final Consumer<String> planned;
    private final NavigableMap<String, DepotJob> jobs = new TreeMap<>();
    private final NavigableMap<String, Future<OpenDepot>> begun = new TreeMap<>();

    /**
     * @param gap asked for, of the fleet
     * @param others depots of the fleet whose plans stay as they are
     * @param planned is told of each depot that has a first plan, from several threads
     */
    DepotsAtWork(double gap, Collection<DepotOutcome> others, Workshop workshop, Consumer<String> planned) {
        this.gap = gap;
        aim = others.isEmpty() ? Aim.SUM : Aim.EACH;
        this.others =
                Certificate.sum(others.stream().map(DepotOutcome::certificate).toList(), gap);
        this.workshop = workshop;
        this.planned = planned;
    }

    /** Begins work on a depot. */
    void begin(DepotJob job) {
        begin(job, () -> {
            OpenDepot depot = job.open(workshop.answers(job));
            workshop.further(job, depot);
            return depot;
        });
    }

    /** Begins work on a depot in a way of its own. */
    void begin(DepotJob job, Callable<OpenDepot> first) {
        String depot = job.problem().depot().id();
        jobs.put(depot, job);
        begun.put(depot, workshop.submit(() -> {
            try {
                return first.call();
            } finally {
                planned.accept(depot);
            }
        }));
    }

    /**
     * Waits for the first plans, and closes the gap.
     *
     * @return by depot
     * @throws NoPlanException if a depot has no plan within the limits
     */
    NavigableMap<String, OpenDepot> finished() {
        NavigableMap<String, OpenDepot> open = new TreeMap<>();
        NoPlanException none = null;
        for (String depot : begun.keySet()) {
            try {
                open.put(depot, Workshop.await(begun.get(depot)));
            } catch (NoPlanException e) {
                none = none == null ? e : none;
            }
        }
        if (none != null) {
            throw none;
        }
        if (open.size() == 1) {
            open.values().forEach(OpenDepot::byItself);
        }
        List<OpenDepot> next = next(open.values());
        while (!next.isEmpty()) {
            List<Future<OpenDepot>> further = new ArrayList<>();
            for (OpenDepot depot : next) {
                further.add(workshop.submit(() -> {
                    workshop.further(jobs.get(depot.depot()), depot);
                    return depot;
                }));
            }
            further.forEach(Workshop::await);
            next = next(open.values());
        }
        return open;
    }

    private List<OpenDepot> next(Collection<OpenDepot> depots) {
        return OpenDepots.next(List.copyOf(depots), others, gap, aim);
    }

    /** The plan of a depot that is finished. */
    static DepotOutcome outcome(OpenDepot depot) {
        DepotResult result = depot.result();
        return DepotOutcome.of(result.plan(), result.replay());
    }
}
