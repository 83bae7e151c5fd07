package depot.optimizer.report.page;

/** A page of a depot that is printed and hung up or handed out. */
enum Sheet {
    /** What is plugged in where and loaded when, for the wall. */
    WALL("wall", "Sheet for the wall"),
    /** What each crew takes along. */
    CREWS("crews", "Pack lists of the crews"),
    /** Circuits and supply, for an electrician. */
    CIRCUITS("circuits", "Circuit schedule");

    private final String stem;
    private final String title;

    Sheet(String stem, String title) {
        this.stem = stem;
        this.title = title;
    }

    /** Name in links and headings. */
    String title() {
        return title;
    }

    /** Name of its file, beside that of the depot's page. */
    String fileName(String depotPage) {
        return stem + depotPage.substring(PageNames.DEPOT.length());
    }
}
