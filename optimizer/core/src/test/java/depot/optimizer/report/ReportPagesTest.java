package depot.optimizer.report;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.plan.Plan;
import depot.optimizer.report.page.Pages;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.scenario.Scenario;
import java.util.Map;
import java.util.Optional;
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
    void showsTheFleetAtAGlance() {
        assertThat(words(table(PAGES.get("report.html"), "glance")))
                .contains("Depot Crews Packs Bays B10 (pack) B5 (pack) four-bay (charger) travel (portable charger)")
                .contains("Main yard (yard) 2 18 12 12 4 2 1 1 1 1")
                .contains("All 3 24 16 18 4 3 1 1 1 1");
        assertThat(table(PAGES.get("report.html"), "sheets"))
                .contains("href=\"wall-yard.html\"", "href=\"crews-hill.html\"", "href=\"circuits-hill.html\"");
    }

    @Test
    void showsDaysDrawnAtRandom() {
        assertThat(PAGES.get("report.html")).contains("Met of days drawn at random", "380 of 400");
        assertThat(words(table(PAGES.get("report.html"), "trial-table")))
                .contains("Days drawn for each depot: 200, seed 7", "Depot yard 200 190 95.0 %", "All 400 380 95.0 %");
    }

    @Test
    void theWallSaysWhatIsPluggedInWhereAndLoadedWhen() {
        String wall = words(PAGES.get("wall-yard.html"));
        assertThat(wall)
                .contains("Circuit wall, load-sharing unit unit-16, set to 10.0 A")
                .contains("unit 1 wall-01 four-bay yes unit 2 wall-02 four-bay")
                .contains("Circuit annexe Outlet Charger Type Priority 1 power bank of park-1 bank-2k")
                .contains("summer Mon-Fri Charger Packs, in this order 12:15 load, collect 15:45 wall-01 2 x B10")
                .contains("15:45 load, collect 06:45 next day bench-01 3 x B10 then 1 x B5")
                .contains("16:00 load, collect 06:45 next day wall-01, 02 4 x B10 each")
                .contains("16:00 load, until the crew leaves power bank of park-1 plug in bank-2k")
                .contains("winter Sat Charger Packs, in this order 13:30 load, collect 06:45 next day wall-01 4 x B10")
                .contains("Leave every plug in its outlet");
    }

    @Test
    void crewsReadWhatTheyTake() {
        String crews = words(PAGES.get("crews-yard.html"));
        assertThat(crews)
                .contains("park-1 On every trip: 1 x power bank bank-2k, 1 x portable charger travel.")
                .contains("summer Mon-Fri 1: 06:45 to 12:10 6 full B10 11:40 to 12:10, power bank: 1 B5 in travel, "
                        + "emptied at stop 2, for use from stop 3")
                .contains("summer Mon-Fri 2: 12:40 to 15:55 1 full B10, 2 B10 at 80 %")
                .contains("park-2 No portable chargers, no power banks.")
                .contains("winter Sat 1: 08:00 to 13:20 4 full B10");
    }

    /** By hand: 500 W / (230 V x 0.95) = 2.29 A; the unit may draw its plug's 10 A of its own 12 A. */
    @Test
    void anElectricianReadsRatingsLoadsAndSettings() {
        String page = PAGES.get("circuits-yard.html");
        assertThat(words(table(page, "rating")))
                .contains("bench existing 230 1 16.0 0.8 12.8 10.0 1 of 4", "annexe new circuit 230 1 16.0 0.8 12.8");
        assertThat(words(table(page, "load"))).contains("wall 0.0 4.6 4.6 12.8 8.2 4.0 10.0 00:00 +1, summer Mon-Fri");
        assertThat(words(table(page, "units"))).contains("wall unit-16 new 4 10.0 10.0");
        assertThat(words(page))
                .contains("Build circuit annexe: 230 V, 1 phase, breaker 16.0 A, 4 outlets.")
                .contains("Put in load-sharing unit unit-16, set to 10.0 A, on circuit wall")
                .contains("Diversity: none is applied", "a licensed electrician checks all of it");
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
        return Pages.of(
                new Catalog(scenario),
                plan,
                ReplayFixture.of(plan),
                PlanFixture.shortages(scenario),
                Optional.of(PlanFixture.trials()));
    }

    private static Set<String> ids(String page) {
        return ID.matcher(page).results().map(match -> match.group(1)).collect(Collectors.toSet());
    }

    /** What a reader sees, one space between words. */
    private static String words(String part) {
        return part.replaceAll("(?s)<style>.*</style>", " ")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ")
                .replace(" ,", ",");
    }

    private static String table(String page, String id) {
        int from = page.indexOf("id=\"" + id + "\"");
        return page.substring(from, page.indexOf("</table>", from));
    }

    private static long count(String page, String part) {
        return Pattern.compile(Pattern.quote(part)).matcher(page).results().count();
    }
}
