package depot.optimizer.report.page;

/** A figure that a reader looks for first: its name, its value with the unit, and a note (may be empty). */
public record Fact(String label, String value, String note) {}
