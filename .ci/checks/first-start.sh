#!/usr/bin/env bash
# Two first starts at the same moment in a tree that was never built: one builds, the other waits, both run. A lock that a start
# left behind when it was killed is taken over. With a builder that takes no time, many at once take over many such locks.
set -euo pipefail
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
fail() { echo "first start: $*" >&2; cat "$work"/one "$work"/two >&2 || true; exit 1; }

mkdir "$work/tree"
git ls-files -z | xargs -0 cp --parents -t "$work/tree"
dead() { sh -c 'echo $$'; }
left_behind() { mkdir "$1/.first-start" && ln -s "$(dead)" "$1/.first-start/owner"; }
left_behind "$work/tree"

"$work/tree/slugpeak" --version >"$work/one" 2>&1 &
first=$!
"$work/tree/slugpeak" --version >"$work/two" 2>&1 &
second=$!
wait "$first" || fail "the first of two failed"
wait "$second" || fail "the second of two failed"
for run in one two; do
  grep -q '^slugpeak [0-9]' "$work/$run" || fail "$run did not say its version"
done
builds=$(cat "$work/one" "$work/two" | grep -c 'first start, building') || true
[ "$builds" = 1 ] || fail "$builds builds instead of one"
[ ! -e "$work/tree/.first-start" ] || fail "the lock is still there"
# Whoever builds leaves a line; the rest of the tool is not looked at.
mkdir -p "$work/bin" "$work/java/bin" "$work/shell"
cp slugpeak pom.xml "$work/shell"
cat >"$work/bin/mvn" <<'END'
#!/bin/sh
echo built >>builds
mkdir -p cli/target/slugpeak/lib
: >cli/target/slugpeak/lib/slugpeak-cli.jar
: >cli/target/slugpeak/slugpeak.jsa
END
printf '#!/bin/sh\necho started\n' >"$work/java/bin/java"
echo 'JAVA_VERSION="17"' >"$work/java/release"
chmod +x "$work/bin/mvn" "$work/java/bin/java"
for round in $(seq 5); do
  rm -rf "$work/shell/cli" "$work/shell/builds"
  left_behind "$work/shell"
  seq 12 | PATH="$work/bin:$PATH" JAVA_HOME="$work/java" xargs -P 12 -I {} "$work/shell/slugpeak" --version >"$work/one" 2>"$work/two" ||
    fail "round $round: one of many failed"
  builds=$(wc -l <"$work/shell/builds")
  [ "$builds" = 1 ] || fail "round $round: $builds builds instead of one"
  [ "$(ls -A "$work/shell" | grep -c first-start)" = 0 ] || fail "round $round: a lock is still there"
done
echo "first start: two at once, one build, both ran; the lock of a dead start was taken over; 5 times 12 at once, one build each"
