package depot.optimizer.plan;

/** The outlet of a plain circuit that a crew's power bank is recharged from. */
public record BankPlacement(String crew, String bankType, String circuit, int outlet) {}
