# Finds or installs what the scripts need. Sourced by ./fayline and ./check.

# may_install: true where Debian's packages can be installed without asking.
may_install() {
    [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1
}

apt_updated=
install() {
    if [ -z "$apt_updated" ]; then
        apt-get update -q >/dev/null 2>&1
        apt_updated=1
    fi
    DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "$@" >/dev/null 2>&1
}

java_major() {
    "$1" -version 2>&1 | sed -n '1s/.*version "\([0-9]*\).*/\1/p'
}

# need_java: sets $java to a Java 17 or newer that has its compiler beside it.
need_java() {
    local candidate major
    for candidate in "${JAVA_HOME:+$JAVA_HOME/bin/java}" "$(command -v java)" /usr/lib/jvm/*17*/bin/java /usr/lib/jvm/*/bin/java; do
        [ -n "$candidate" ] && [ -x "$candidate" ] || continue
        candidate=$(readlink -f "$candidate")
        [ -x "$(dirname "$candidate")/javac" ] || continue
        major=$(java_major "$candidate")
        if [ "${major:-0}" -ge 17 ]; then
            java=$candidate
            JAVA_HOME=$(dirname "$(dirname "$candidate")")
            export JAVA_HOME
            return 0
        fi
    done
    if may_install; then
        echo "Fayline: no JDK 17 or newer found; installing Debian's openjdk-17-jdk-headless ..." >&2
        if install openjdk-17-jdk-headless || install default-jdk-headless; then
            need_java_again
            return
        fi
    fi
    cat >&2 <<'TXT'
Fayline needs a Java development kit (JDK), version 17 or newer, and found none.
On Debian or Ubuntu:  sudo apt-get install openjdk-17-jdk-headless maven
Elsewhere: install any JDK 17 or newer, set JAVA_HOME to its folder, and start again.
TXT
    return 1
}

need_java_again() {
    may_install() { false; }
    need_java
}

# need_maven: true once a Maven 3.8 or newer can be called.
need_maven() {
    command -v mvn >/dev/null 2>&1 && return 0
    if may_install; then
        echo "Fayline: no Maven found; installing Debian's maven ..." >&2
        install maven && command -v mvn >/dev/null 2>&1 && return 0
    fi
    cat >&2 <<'TXT'
Fayline is built with Maven 3.8 or newer and found none.
On Debian or Ubuntu:  sudo apt-get install maven
Elsewhere: install Maven so that `mvn -v` answers, and start again.
TXT
    return 1
}
