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

    /** File name of the depot's page by depot id, in the plan's order, no two alike even where capitals do not count. */
    public static Map<String, String> of(Plan plan) {
        Map<String, String> names = new LinkedHashMap<>();
        Set<String> taken = new HashSet<>();
        for (DepotPlan depot : plan.depots()) {
            String stem = stem(depot.depot());
            String name = stem;
            for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
                name = stem + "-" + i;
            }
            names.put(depot.depot(), name + ".html");
        }
        return names;
    }

    private static String stem(String id) {
        String safe = id.replaceAll("[^A-Za-z0-9_-]+", "_");
        return DEPOT + "-" + (safe.length() > LONGEST ? safe.substring(0, LONGEST) : safe);
    }
}
