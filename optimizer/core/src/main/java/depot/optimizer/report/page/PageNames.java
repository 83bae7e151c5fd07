package depot.optimizer.report.page;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** File names of the pages. Ids of depots may hold anything; file names hold letters, digits, - and _ only. */
public final class PageNames {

    /** The page of the fleet. */
    public static final String FLEET = "report.html";

    /** How names of depots' pages start. */
    static final String DEPOT = "depot";

    private static final int LONGEST = 60;

    private PageNames() {}

    /** File name by {@link #key}, in the plan's order, no two alike even where capitals do not count. */
    public static Map<String, String> of(Plan plan) {
        Map<String, String> names = new LinkedHashMap<>();
        Set<String> taken = new HashSet<>();
        for (DepotPlan depot : plan.depots()) {
            String stem =
                    plan.phases().size() > 1 ? stem(depot.depot()) + "-" + safe(depot.phase()) : stem(depot.depot());
            String name = stem;
            for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
                name = stem + "-" + i;
            }
            names.put(key(depot), name + ".html");
        }
        return names;
    }

    /** Of one plan of a depot. */
    static String key(DepotPlan depot) {
        return depot.phase() + "/" + depot.depot();
    }

    private static String stem(String id) {
        return DEPOT + "-" + safe(id);
    }

    private static String safe(String id) {
        String safe = id.replaceAll("[^A-Za-z0-9_-]+", "_");
        return safe.length() > LONGEST ? safe.substring(0, LONGEST) : safe;
    }
}
