#!/usr/bin/env bash
# Two first starts at the same moment in a tree that was never built: one builds, the other waits, both run. A lock that a start
# left behind when it was killed is taken over.
set -euo pipefail
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
fail() { echo "first start: $*" >&2; cat "$work"/one "$work"/two >&2 || true; exit 1; }

mkdir "$work/tree"
git ls-files -z | xargs -0 cp --parents -t "$work/tree"
mkdir "$work/tree/.first-start"
sh -c 'echo $$' >"$work/tree/.first-start/pid"

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
echo "first start: two at once, one build, both ran; the lock of a dead start was taken over"
