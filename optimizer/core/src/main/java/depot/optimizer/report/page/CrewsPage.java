package depot.optimizer.report.page;

import java.util.List;

/** What the pack lists of a depot's crews show, one block for each crew. */
public record CrewsPage(String title, String subtitle, List<Cell> neighbours, List<Crew> crews) {

    /**
     * A crew.
     *
     * @param kit what it carries on every trip beside packs, in one line
     * @param trips what it takes on which days, without rows: it takes no packs
     */
    public record Crew(String id, String name, String kit, TableView trips) {}
}
