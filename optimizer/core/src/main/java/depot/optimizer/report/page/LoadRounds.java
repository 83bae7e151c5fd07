package depot.optimizer.report.page;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.report.page.WallPage.Bench;
import depot.optimizer.report.page.WallPage.Day;
import depot.optimizer.report.page.WallPage.Round;
import depot.optimizer.report.text.Clock;
import depot.optimizer.report.text.DayNames;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is loaded when, in as few lines as say it: chargers that get the same stand together, and so do days that are alike. */
final class LoadRounds {

    private static final int DAY_MINUTES = 1440;

    private final DepotPlan plan;
    private final int rounding;

    /** When packs go in and when they are taken out. */
    private record Window(int load, int collect) {

        /** Until the crew leaves again, whenever that is. */
        static final int NEXT_TRIP = Integer.MAX_VALUE;

        String collectWords() {
            return collect == NEXT_TRIP ? "until the crew leaves" : "collect " + time(collect);
        }
    }

    private LoadRounds(DepotPlan plan, int handoverMinutes) {
        this.plan = plan;
        this.rounding = handoverMinutes;
    }

    /** In the order of the plan's kinds of day; the days of those that load alike are added up. */
    static List<Day> of(DepotPlan plan, int handoverMinutes) {
        LoadRounds rounds = new LoadRounds(plan, handoverMinutes);
        Map<List<Round>, List<SeasonDay>> alike = new LinkedHashMap<>();
        for (DayPlan day : plan.days()) {
            alike.computeIfAbsent(rounds.rounds(day), same -> new ArrayList<>()).addAll(day.occurrences());
        }
        List<Day> days = new ArrayList<>();
        alike.forEach(
                (same, occurrences) -> days.add(new Day("loads-" + (days.size() + 1), DayNames.of(occurrences), same)));
        return days;
    }

    private List<Round> rounds(DayPlan day) {
        Map<Window, Map<List<String>, List<String>>> windows =
                new TreeMap<>(Comparator.comparingInt(Window::load).thenComparingInt(Window::collect));
        for (ChargerLoad load : day.loads()) {
            add(windows, new Window(load.loadMinute(), load.collectMinute()), packs(load), load.charger());
        }
        for (BankPlacement bank : plan.banks()) {
            lastReturn(day, bank.crew())
                    .forEach(back -> add(
                            windows,
                            new Window(back, Window.NEXT_TRIP),
                            List.of("plug in " + bank.bankType()),
                            "power bank of " + bank.crew()));
        }
        return windows.entrySet().stream()
                .map(entry -> new Round(
                        time(entry.getKey().load()), entry.getKey().collectWords(), benches(entry.getValue())))
                .toList();
    }

    private static void add(
            Map<Window, Map<List<String>, List<String>>> windows, Window window, List<String> packs, String charger) {
        windows.computeIfAbsent(window, any -> new LinkedHashMap<>())
                .computeIfAbsent(packs, any -> new ArrayList<>())
                .add(charger);
    }

    private static List<Bench> benches(Map<List<String>, List<String>> chargersByPacks) {
        return chargersByPacks.entrySet().stream()
                .map(entry -> new Bench(ChargerNames.of(entry.getValue()), each(entry.getKey(), entry.getValue())))
                .toList();
    }

    private static List<String> each(List<String> packs, List<String> chargers) {
        List<String> words = new ArrayList<>(packs);
        if (chargers.size() > 1) {
            words.add("each");
        }
        return words;
    }

    private List<String> packs(ChargerLoad load) {
        List<String> parts = new ArrayList<>();
        for (ChargerLoad.Loaded group : load.packs()) {
            if (!parts.isEmpty()) {
                parts.add("then");
            }
            parts.add(group.count() + " x " + group.packType());
            if (!group.pool().equals(plan.depot())) {
                parts.add((plan.visitor(group.pool()) ? "of the visiting " : "of ") + group.pool());
            }
            if (group.level() != ChargerLoad.Level.FULL) {
                parts.add("to 80 %");
            }
        }
        return parts;
    }

    /** The handover after its last return of the day; none where it does not go out. */
    private List<Integer> lastReturn(DayPlan day, String crew) {
        return day.trips().stream()
                .filter(trip -> trip.crew().equals(crew))
                .map(TripPlan::returnMinute)
                .max(Comparator.naturalOrder())
                .map(back -> -Math.floorDiv(-back, rounding) * rounding)
                .stream()
                .toList();
    }

    private static String time(int minute) {
        return minute < DAY_MINUTES ? Clock.time(minute) : Clock.time(Math.floorMod(minute, DAY_MINUTES)) + " next day";
    }
}
