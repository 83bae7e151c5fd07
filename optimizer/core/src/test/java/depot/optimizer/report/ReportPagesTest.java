package depot.optimizer.report;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.plan.Plan;
import depot.optimizer.report.page.Pages;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.scenario.Scenario;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ReportPagesTest {

    private static final Pattern ID = Pattern.compile("\\sid=\"([^\"]*)\"");
    private static final Pattern LINK = Pattern.compile("\\s(?:href|src)=\"([^\"]*)\"");
    private static final Pattern LABELLED_BY = Pattern.compile("aria-labelledby=\"([^\"]*)\"");
    private static final Pattern HEADING = Pattern.compile("<h([1-6])");

    private static final Map<String, String> PAGES = pages(ScenarioFixture.hostile());

    @Test
    void makesAPageOfTheFleetAndFourOfEachDepot() {
        assertThat(PAGES)
                .containsOnlyKeys(
                        "report.html",
                        "depot-yard.html",
                        "wall-yard.html",
                        "crews-yard.html",
                        "circuits-yard.html",
                        "depot-hill.html",
                        "wall-hill.html",
                        "crews-hill.html",
                        "circuits-hill.html");
    }

    @Test
    void escapesHostileNames() {
        assertThat(PAGES.values()).allSatisfy(page -> assertThat(page)
                .doesNotContain("<script")
                .doesNotContain("<SCRIPT")
                .doesNotContainPattern("\\son\\w+="));
        assertThat(PAGES.get("report.html")).contains("Hill &amp; Dale &lt;script&gt;alert(1)&lt;/script&gt;");
        assertThat(PAGES.get("depot-hill.html")).contains("=cmd|' /C calc'!A0");
    }

    @Test
    void theFleetsPageHasTheCashFlow() {
        assertThat(PAGES.get("report.html"))
                .contains("What is paid and saved, year by year", "Staying on petrol", "Internal rate of return")
                .contains("Costs added up over the years", "Petrol saved");
    }

    @Test
    void asksForNothingFromElsewhere() {
        assertThat(PAGES.values()).allSatisfy(page -> assertThat(page)
                .doesNotContain("http:")
                .doesNotContain("https:")
                .doesNotContain("//")
                .doesNotContain("url(")
                .doesNotContain("@import"));
    }

    @Test
    void givesEveryIdOnce() {
        assertThat(PAGES.values())
                .allSatisfy(page -> assertThat(ID.matcher(page).results().map(match -> match.group(1)))
                        .isNotEmpty()
                        .doesNotHaveDuplicates()
                        .allSatisfy(id -> assertThat(id).matches("[A-Za-z][\\w-]*")));
    }

    @Test
    void linksOnlyToWhatIsThere() {
        PAGES.forEach((name, page) -> LINK.matcher(page).results().forEach(match -> {
            String[] target = match.group(1).split("#", 2);
            String file = target[0].isEmpty() ? name : target[0];
            assertThat(PAGES)
                    .as("page of the link %s on %s", match.group(1), name)
                    .containsKey(file);
            if (target.length == 2) {
                assertThat(ids(PAGES.get(file)))
                        .as("%s on %s", match.group(1), name)
                        .contains(target[1]);
            }
        }));
    }

    @Test
    void labelsByWhatIsThere() {
        assertThat(PAGES.values()).allSatisfy(page -> assertThat(ids(page))
                .containsAll(LABELLED_BY
                        .matcher(page)
                        .results()
                        .flatMap(match -> Set.of(match.group(1).split(" ")).stream())
                        .toList()));
    }

    @Test
    void keepsHeadingsInOrder() {
        assertThat(PAGES.values()).allSatisfy(page -> {
            int before = 0;
            for (var match : HEADING.matcher(page).results().toList()) {
                int level = Integer.parseInt(match.group(1));
                assertThat(level).isLessThanOrEqualTo(before + 1);
                before = level;
            }
            assertThat(page).containsOnlyOnce("<h1");
        });
    }

    @Test
    void givesEveryTableACaptionAndEveryChartItsNumbers() {
        assertThat(PAGES.values()).allSatisfy(page -> {
            assertThat(count(page, "<table")).isEqualTo(count(page, "<caption")).isPositive();
            assertThat(count(page, "<figure")).isEqualTo(count(page, "class=\"numbers\""));
            assertThat(count(page, "role=\"img\"")).isEqualTo(count(page, "<desc "));
        });
        assertThat(count(PAGES.get("depot-yard.html"), "<figure")).isEqualTo(3);
    }

    @Test
    void showsSumsThatAddUp() {
        assertThat(PAGES.get("report.html")).contains("EUR 12,000.00", "EUR 12,254.60");
        assertThat(PAGES.get("depot-yard.html")).contains("EUR 9,000.00", "EUR 9,319.60");
        assertThat(PAGES.get("depot-hill.html")).contains("EUR 3,000.00", "EUR 2,935.00");
    }

    @Test
    void showsShortagesViolationsAndHeavyPacks() {
        assertThat(PAGES.get("report.html")).contains("Hold 7 packs in the vehicle", "150 of 198 days a year");
        assertThat(PAGES.get("depot-yard.html"))
                .contains("3 of 4 packs are full", "never ready", "above-100-wh", "2,048", "None: the packs cover");
        assertThat(PAGES.get("depot-hill.html")).contains("Hold 7 packs in the vehicle", "short as planned");
    }

    @Test
    void countsInSingularAndPlural() {
        assertThat(PAGES.get("report.html")).contains("2 depots, ");
        assertThat(PAGES.values()).allSatisfy(page -> assertThat(page)
                .doesNotContainPattern("[^\\d.,]1 (depots|crews|years|days|handovers|steps|rules)\\b"));
    }

    @Test
    void namesTheDepotOfALoadOnThePageOfTheFleetOnly() {
        assertThat(table(PAGES.get("report.html"), "tightest")).contains(">Depot<", "yard");
        assertThat(table(PAGES.get("depot-yard.html"), "peaks"))
                .contains("wall")
                .doesNotContain(">Depot<", "yard");
    }

    static Map<String, String> pages(Scenario scenario) {
        Plan plan = PlanFixture.of(scenario);
        return Pages.of(new Catalog(scenario), plan, ReplayFixture.of(plan), PlanFixture.shortages(scenario));
    }

    private static Set<String> ids(String page) {
        return ID.matcher(page).results().map(match -> match.group(1)).collect(Collectors.toSet());
    }

    private static String table(String page, String id) {
        int from = page.indexOf("id=\"" + id);
        return page.substring(from, page.indexOf("</table>", from));
    }

    private static long count(String page, String part) {
        return Pattern.compile(Pattern.quote(part)).matcher(page).results().count();
    }
}
