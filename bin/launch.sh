# Read by the launchers beside it, never run on its own. They set $home (the project's folder) and $name.
#
#   find_java           sets $java and $java_home to a Java 17, or stops
#   ensure_built        builds the program unless it is newer than its sources
#   ensure_tests_built  the same with the test classes
#   run_java CLASSPATH MAIN ARGS...
#
# Environment: JAVA_HOME, where the JDK is; OPTIMIZER_JAVA_OPTS, options for the virtual machine that
# override the ones set here, such as -Xmx8g.

core=$home/optimizer/core
state=$core/target/launcher
quiet=false

say() {
  [ "$quiet" = true ] || printf '%s: %s\n' "$name" "$*" >&2
}

die() {
  printf '%s: %s\n' "$name" "$*" >&2
  exit 1
}

# Asking a Java for its version takes longer than a short command, so the answer is kept in $state/java.
find_java() {
  for java in "${JAVA_HOME:+$JAVA_HOME/bin/java}" "$(command -v java || true)" /usr/lib/jvm/*17*/bin/java; do
    [ -x "$java" ] || continue
    if [ -r "$state/java" ]; then
      { read -r known && read -r java_home; } <"$state/java" || known=
      [ "$known" != "$java" ] || return 0
    fi
    settings=$("$java" -XshowSettings:properties -version 2>&1) || continue
    case $(printf '%s\n' "$settings" | sed -n 's/^ *java.specification.version = //p') in
      17) ;;
      *) continue ;;
    esac
    java_home=$(printf '%s\n' "$settings" | sed -n 's/^ *java.home = //p')
    mkdir -p "$state"
    printf '%s\n%s\n' "$java" "$java_home" >"$state/java.$$"
    mv "$state/java.$$" "$state/java"
    return 0
  done
  die "needs Java 17 and found none. Install a JDK 17 (on Debian: apt-get install openjdk-17-jdk-headless), or set JAVA_HOME to one."
}

ensure_built() {
  stale "$state/built" "$core/src/main" || return 0
  locked build "$state/built" -Dmaven.test.skip=true "$core/src/main"
}

ensure_tests_built() {
  if stale "$state/built" "$core/src/main" || stale "$state/tests-built" "$core/src"; then
    locked build "$state/tests-built" -DskipTests "$core/src"
    touch -r "$state/tests-built" "$state/built"
  fi
}

# stale STAMP SOURCES: whether anything changed since the build that STAMP marks. Folders count too: theirs is the
# only time that changes when a file is deleted.
stale() {
  [ -f "$1" ] && [ -f "$core/target/optimizer.jar" ] || return 0
  [ -n "$(find "$home/pom.xml" "$core/pom.xml" "$2" -newer "$1" -print | head -n 1)" ]
}

# locked FUNCTION ARGS...: one build at a time in this folder; who comes second waits and finds it done.
locked() {
  mkdir -p "$state"
  if command -v flock >/dev/null 2>&1; then
    exec 9>"$state/lock"
    flock -n 9 || { say 'waiting for a build that is already running'; flock 9; }
    "$@"
    exec 9>&-
  else
    until mkdir "$state/lock.d" 2>/dev/null; do
      owner=$(cat "$state/lock.d/pid" 2>/dev/null || true)
      if [ -n "$owner" ] && ! kill -0 "$owner" 2>/dev/null; then rm -rf "$state/lock.d"; fi
      sleep 1
    done
    echo $$ >"$state/lock.d/pid"
    trap 'rm -rf "$state/lock.d"' EXIT
    "$@"
    rm -rf "$state/lock.d"
    trap - EXIT
  fi
}

# build STAMP MAVEN_OPTION SOURCES. The stamp takes the time at which the build began, so that what is edited
# meanwhile is built the next time.
build() {
  stale "$1" "$3" || return 0
  command -v mvn >/dev/null 2>&1 ||
    die 'needs Maven 3.8 or newer to build and found none. Install it (on Debian: apt-get install maven).'
  [ -x "$java_home/bin/javac" ] ||
    die "needs a whole JDK 17 to build; $java_home has no compiler (on Debian: apt-get install openjdk-17-jdk-headless)."
  say 'building; the first time takes a few minutes'
  began=$state/began.$$
  : >"$began"
  JAVA_HOME=$java_home mvn -q -B -Dstyle.color=never -f "$home/pom.xml" -pl optimizer/core -am \
    "$2" -Dspotless.check.skip package 1>&2 || { rm -f "$began"; die 'the build failed; its messages are above.'; }
  take_jar
  extract_natives
  archive_classes
  mv "$began" "$1"
}

# A program that is running keeps the jar it opened: the new one is moved into its place, not written over it.
take_jar() {
  cp "$core/target/optimizer-core.jar" "$core/target/optimizer.jar.$$"
  mv -f "$core/target/optimizer.jar.$$" "$core/target/optimizer.jar"
}

platform() {
  case $(uname -s)-$(uname -m) in
    Linux-x86_64) echo linux-x86-64 ;;
    Linux-aarch64) echo linux-aarch64 ;;
    Darwin-x86_64) echo darwin-x86-64 ;;
    Darwin-arm64) echo darwin-aarch64 ;;
  esac
}

# The solver's native libraries, unpacked once: otherwise each start unpacks 70 MB to a temporary folder. Where that
# is not possible the solver does so by itself.
extract_natives() {
  system=$(platform)
  for packed in "$core"/target/lib/ortools-"$system"-*.jar; do
    unpacked=$state/natives/$(basename "$packed" .jar)
    if [ -z "$system" ] || [ ! -f "$packed" ] || [ -d "$unpacked" ] || [ ! -x "$java_home/bin/jar" ]; then continue; fi
    rm -rf "$state/unpacking"
    mkdir -p "$state/unpacking" "$state/natives"
    (cd "$state/unpacking" && "$java_home/bin/jar" xf "$packed")
    rm -rf "$state/natives"/*
    mv "$state/unpacking/ortools-$system" "$unpacked"
    rm -rf "$state/unpacking"
  done
}

# Class data in the form in which the virtual machine wants them, which halves the time a short command takes. Made
# anew after each build; one that does not fit is ignored.
archive_classes() {
  rm -f "$state/classes.jsa"
  "$java" -Xshare:auto -XX:ArchiveClassesAtExit="$state/classes.jsa.$$" -XX:+UseSerialGC -Doptimizer.home="$home" \
    -cp "$core/target/optimizer.jar" depot.optimizer.cli.Optimizer check "$home/inputs/fennmoor" >/dev/null 2>&1 || true
  if [ -f "$state/classes.jsa.$$" ]; then mv "$state/classes.jsa.$$" "$state/classes.jsa"; fi
}

# Quiet about the machine's own warnings, which would land among the results.
run_java() {
  class_path=$1
  shift
  natives=
  for folder in "$state"/natives/*/; do natives=${folder%/}; done
  tty=false
  if [ -t 2 ]; then tty=true; fi
  # A command that takes a second is over before the second compiler has earned its keep.
  compiler=
  case " $* " in
    *' plan '* | *' replay '* | *' sweep '* | *' explain '* | *.Benchmark' '*) ;;
    *) compiler=-XX:TieredStopAtLevel=1 ;;
  esac
  # File names beyond ASCII need a locale that has them.
  case ${LC_ALL:-${LC_CTYPE:-${LANG:-C}}} in
    C | POSIX) export LC_ALL=C.UTF-8 ;;
  esac
  archive=
  if [ -f "$state/classes.jsa" ]; then archive=-XX:SharedArchiveFile=$state/classes.jsa; fi
  # shellcheck disable=SC2086 # the user's options are words
  exec "$java" -Xlog:disable -Xlog:all=error:stderr -Xshare:auto ${archive:+"$archive"} $compiler \
    -XX:+UseSerialGC -XX:-UsePerfData -Xmx2g -Xss4m -Dfile.encoding=UTF-8 -Djava.library.path="$natives" \
    -Doptimizer.home="$home" -Doptimizer.tty=$tty ${OPTIMIZER_JAVA_OPTS-} -cp "$class_path" "$@"
}
