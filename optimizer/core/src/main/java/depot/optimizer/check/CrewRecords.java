package depot.optimizer.check;

import depot.optimizer.dictionary.CrewTables.CrewBases;
import depot.optimizer.dictionary.CrewTables.Crews;
import depot.optimizer.dictionary.CrewTables.Tools;
import depot.optimizer.dictionary.RouteTables.Seasons;
import depot.optimizer.dictionary.RouteTables.Stops;
import depot.optimizer.dictionary.RouteTables.WorkRows;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewBase;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.Tool;
import depot.optimizer.scenario.Work;
import java.util.Optional;

/** Makes the records of seasons, crews and their days out of sound rows. */
final class CrewRecords {
    private CrewRecords() {}

    static Season season(TypedRow row) {
        return new Season(
                row.get(Seasons.SEASON), row.get(Seasons.WEEKS_PER_YEAR), row.get(Seasons.PACK_CAPACITY_FACTOR));
    }

    static Tool tool(TypedRow row) {
        return new Tool(
                row.get(Tools.TOOL),
                row.get(Tools.FAMILY),
                row.get(Tools.AVERAGE_WATTS),
                DepotRecords.number(row.find(Tools.PETROL_LITRES_PER_HOUR)));
    }

    static Crew crew(TypedRow row) {
        return new Crew(
                row.get(Crews.CREW),
                row.get(Crews.DEPOT),
                row.get(Crews.PACK_PLACES),
                row.get(Crews.PAYLOAD_KG),
                row.get(Crews.VEHICLE_WATTS),
                row.get(Crews.PETROL_COST_PER_YEAR));
    }

    static CrewBase crewBase(TypedRow row) {
        return new CrewBase(row.get(CrewBases.CREW), row.get(CrewBases.DEPOT), row.get(CrewBases.COST_PER_YEAR));
    }

    /** A blank arrival or departure equals the other one; both blank is an error that {@link RouteRules} reports. */
    static RouteStop routeStop(TypedRow row) {
        Optional<Integer> arrive = row.find(Stops.ARRIVE);
        Optional<Integer> leave = row.find(Stops.LEAVE);
        return new RouteStop(
                row.get(Stops.SEASON),
                row.get(Stops.DAYS),
                row.get(Stops.CREW),
                row.get(Stops.STOP),
                row.get(Stops.PLACE),
                arrive.or(() -> leave).orElse(0),
                leave.or(() -> arrive).orElse(0),
                row.get(Stops.SITE_WATTS));
    }

    static Work work(TypedRow row) {
        return new Work(
                row.get(WorkRows.SEASON),
                row.get(WorkRows.DAYS),
                row.get(WorkRows.CREW),
                row.get(WorkRows.STOP),
                row.get(WorkRows.TOOL),
                row.get(WorkRows.HOURS),
                row.get(WorkRows.TOOLS_AT_ONCE));
    }
}
