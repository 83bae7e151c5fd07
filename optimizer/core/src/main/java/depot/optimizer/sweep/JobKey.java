package depot.optimizer.sweep;

import depot.optimizer.mip.Engine;
import depot.optimizer.plan.Plan;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** Names of jobs: the same for jobs that come to the same plan, in every run of the same program. */
final class JobKey {
    private JobKey() {}

    /**
     * The name of a job.
     *
     * @param parts everything that its plan depends on
     */
    static String of(String... parts) {
        List<String> all = new ArrayList<>();
        all.add(String.valueOf(JobKey.class.getPackage().getImplementationVersion()));
        all.add(Engine.libraryVersion());
        all.add(Integer.toString(Plan.FORMAT_VERSION));
        all.addAll(List.of(parts));
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256")
                    .digest(String.join("\n", all).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256.", impossible);
        }
    }
}
