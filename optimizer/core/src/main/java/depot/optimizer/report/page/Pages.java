package depot.optimizer.report.page;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.replay.TrialReport;
import depot.optimizer.report.table.Catalog;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The pages of a run as texts. Templates escape what they are given by where it stands. */
public final class Pages {

    private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Pages.class.getClassLoader(), "depot.optimizer.report.templates");

    private Pages() {}

    /**
     * Every page by its file name.
     *
     * @param trials days drawn at random, empty: none were asked for
     * @throws IllegalArgumentException if plan, scenario and replay do not belong together
     */
    public static SortedMap<String, String> of(
            Catalog catalog,
            Plan plan,
            ReplayReport report,
            List<ExplainedShortage> shortages,
            Optional<TrialReport> trials) {
        PageMaker maker = PageMaker.of(catalog, plan, report, shortages, trials);
        SortedMap<String, String> pages = new TreeMap<>();
        pages.put(PageNames.FLEET, render("fleet.jte", FleetPages.of(maker)));
        for (DepotPlan depot : plan.depots()) {
            String page = maker.pageName(depot);
            pages.put(page, render("depot.jte", DepotPages.of(maker, depot)));
            pages.put(Sheet.WALL.fileName(page), render("wall.jte", WallPages.of(maker, depot)));
            pages.put(Sheet.CREWS.fileName(page), render("crews.jte", CrewsPages.of(maker, depot)));
            pages.put(Sheet.CIRCUITS.fileName(page), render("circuits.jte", CircuitsPages.of(maker, depot)));
        }
        return pages;
    }

    /** The page of a comparison of runs. */
    public static String comparison(ComparisonPage page) {
        return render("compare.jte", page);
    }

    /** The page of a sweep. */
    public static String of(SweepPage page) {
        return render("sweep.jte", page);
    }

    /** The page of a rerun. */
    public static String of(RerunPage page) {
        return render("rerun.jte", page);
    }

    /** The page about a plan's questions. */
    public static String of(AdvicePage page) {
        return render("explain.jte", page);
    }

    private static String render(String template, Object page) {
        StringOutput output = new StringOutput();
        ENGINE.render(template, page, output);
        return output.toString();
    }
}
