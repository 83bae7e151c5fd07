package depot.optimizer.launcher;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * The real launchers in a project that has nothing else: its Maven only notes that it was called, its Java only prints what it was
 * asked to run. So the launchers' own rules can be tested without a build.
 */
final class FakeProject {

    /** What a launch left behind. */
    record Launch(int status, String out, String err) {}

    private static final List<String> TOOLS = List.of(
            "sh",
            "dirname",
            "basename",
            "readlink",
            "find",
            "head",
            "sed",
            "cat",
            "cp",
            "mv",
            "mkdir",
            "rm",
            "touch",
            "uname",
            "flock",
            "sleep");

    private final Path folder;
    private final Path project;
    private final Path tools;

    FakeProject(Path folder) throws IOException {
        this.folder = folder;
        project = folder.resolve("my project");
        tools = Files.createDirectories(folder.resolve("tools"));
        copyLaunchers();
        Files.createDirectories(project.resolve("optimizer/core/src/main/java"));
        Files.createDirectories(project.resolve("optimizer/core/src/test/java"));
        Files.writeString(project.resolve("pom.xml"), "<project/>");
        Files.writeString(project.resolve("optimizer/core/pom.xml"), "<project/>");
        Files.writeString(source("Main.java"), "class Main {}");
        makeOlder();
        offerTools();
        script(tools.resolve("mvn"), """
                echo called >>'%s'
                sleep 0.2
                mkdir -p '%2$s/optimizer/core/target'
                echo jar >'%2$s/optimizer/core/target/optimizer-core.jar'
                echo 'words of the build'
                """.formatted(calls(), project));
        script(folder.resolve("jdk/bin/javac"), "exit 0");
        script(folder.resolve("jdk/bin/java"), """
                case "$*" in
                  *-XshowSettings*) printf '    java.home = %s\\n    java.specification.version = 17\\n' ;;
                  *ArchiveClassesAtExit*) ;;
                  *) pwd; printf '<%%s>\\n' "$@" ;;
                esac
                """.formatted(folder.resolve("jdk")));
    }

    Path launcher(String name) {
        return project.resolve("bin").resolve(name);
    }

    Path source(String name) {
        return project.resolve("optimizer/core/src/main/java").resolve(name);
    }

    /** Replaces a tool that the launchers call. */
    void replaceTool(String name, String body) throws IOException {
        Files.deleteIfExists(tools.resolve(name));
        script(tools.resolve(name), body);
    }

    void removeTool(String name) throws IOException {
        Files.delete(tools.resolve(name));
    }

    /** How often Maven was called. */
    int builds() throws IOException {
        return Files.exists(calls()) ? Files.readAllLines(calls()).size() : 0;
    }

    Process start(Path launcher, Path from, String... arguments) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(Stream.concat(Stream.of(launcher.toString()), Stream.of(arguments))
                .toList());
        builder.directory(from.toFile());
        builder.environment().clear();
        builder.environment().put("PATH", tools.toString());
        builder.environment().put("JAVA_HOME", folder.resolve("jdk").toString());
        return builder.start();
    }

    Launch launch(Path launcher, Path from, String... arguments) throws IOException, InterruptedException {
        return finish(start(launcher, from, arguments));
    }

    static Launch finish(Process process) throws IOException, InterruptedException {
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor(1, TimeUnit.MINUTES);
        return new Launch(process.exitValue(), out, err);
    }

    private Path calls() {
        return folder.resolve("maven-calls");
    }

    private void copyLaunchers() throws IOException {
        Path real = Path.of("").toAbsolutePath().resolve("../../bin").normalize();
        Path copies = Files.createDirectories(project.resolve("bin"));
        try (Stream<Path> files = Files.list(real)) {
            for (Path file : files.toList()) {
                Files.copy(file, copies.resolve(file.getFileName()));
            }
        }
    }

    /** A folder of tools that has no Maven and no Java but the fake ones. */
    private void offerTools() throws IOException {
        for (String tool : TOOLS) {
            for (Path real : List.of(Path.of("/bin", tool), Path.of("/usr/bin", tool))) {
                if (Files.exists(real)) {
                    script(tools.resolve(tool), "exec %s \"$@\"".formatted(real));
                }
            }
        }
    }

    /** Sources are as a rule older than the build, even by a coarse clock. */
    private void makeOlder() throws IOException {
        FileTime before = FileTime.from(Instant.now().minusSeconds(60));
        try (Stream<Path> files = Files.walk(project)) {
            for (Path file : files.toList()) {
                Files.setLastModifiedTime(file, before);
            }
        }
    }

    private static void script(Path file, String body) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, "#!/bin/sh\n" + body + "\n");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
}
