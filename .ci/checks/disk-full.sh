#!/usr/bin/env bash
# A log on a disk of 64 kB: the tool says at once that the disk is full, measures to the end, leaves with 1, and what is in the
# log can be replayed. When the disk has space again while it measures, the record goes on and says what is missing.
set -euo pipefail
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
disk=$work/disk
tool=''
cleanup() {
  [ -z "$tool" ] || kill "$tool" 2>/dev/null || true
  umount "$disk" 2>/dev/null || true
  rm -rf "$work"
}
trap cleanup EXIT

fail() { echo "disk full: $*" >&2; cat "$work"/errors >&2 || true; exit 1; }

mkdir "$disk"
if ! refused=$(mount -t tmpfs -o size=64k tmpfs "$disk" 2>&1); then
  echo "disk full: NOT CHECKED, nothing can be mounted here: $refused"
  exit 0
fi
export XDG_STATE_HOME=$work/state
rows=3000
awk -v rows=$rows 'BEGIN { for (i = 0; i < rows; i++) printf "%.2f,%.4f\n", i / 50, 1 / (1 + (i / 300 - 2) ^ 2) }' >"$work"/slug.csv

code=0
./slugpeak watch --from "$work"/slug.csv --json --log "$disk"/log.jsonl >"$work"/records 2>"$work"/errors || code=$?
[ "$code" = 1 ] || fail "the exit code is $code, not 1: the log is not whole"
[ "$(grep -c '"type":"reading"' "$work"/records)" = $rows ] || fail "measuring did not go on to the end"
grep -q 'cannot write to .*log.jsonl (.*): measuring goes on without a record; free some space' "$work"/errors ||
  fail "the full disk was not said"
[ "$(wc -l <"$work"/errors)" -le 2 ] || fail "it was said more than once"
! grep -q 'Exception' "$work"/errors || fail "a stack trace"
[ "$(tail -c 1 "$disk"/log.jsonl | od -An -tx1 | tr -d ' ')" = 0a ] || fail "the log ends within a line"
./slugpeak replay "$disk"/log.jsonl --json >"$work"/replayed 2>"$work"/errors || fail "the log cannot be replayed"
kept=$(grep -c '"type":"reading"' "$work"/replayed)
[ "$kept" -ge 100 ] || fail "only $kept readings are in the log"
cmp -s <(grep '"type":"reading"' "$disk"/log.jsonl) <(grep '"type":"reading"' "$work"/records | head -n "$kept") ||
  fail "the log does not hold the first readings"

# The disk is full already when the log is made, and gets space while the tool measures.
rm "$disk"/log.jsonl
head -c 200000 /dev/zero >"$disk"/ballast 2>/dev/null || true
mkfifo "$work"/pipe
./slugpeak watch --from - --json --log "$disk"/log.jsonl <"$work"/pipe >"$work"/records 2>"$work"/errors &
tool=$!
exec 3>"$work"/pipe
wait_for() { for _ in $(seq 300); do ! grep -q "$1" "$2" 2>/dev/null || return 0; sleep 0.1; done; fail "'$1' did not come"; }
echo 0,1 >&3
wait_for '"value":1.0' "$work"/records
wait_for 'measuring goes on without a record' "$work"/errors
rm "$disk"/ballast
echo 1,2 >&3
wait_for '"value":2.0' "$work"/records
exec 3>&-
wait "$tool" || fail "the exit code is $?, not 0"
tool=''
grep -q 'is written again: nothing is missing' "$work"/errors || fail "that the record goes on was not said"
cmp -s "$disk"/log.jsonl "$work"/records || fail "the log is not whole after space was made"
echo "disk full: said at once, measured to the end, $kept readings kept and replayed; whole again when there was space"
