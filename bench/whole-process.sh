#!/usr/bin/env bash
# Measures the packaged tool as a whole process, from outside. By hand, not in continuous integration: it takes a minute and
# times depend on the machine. Needs bash, awk and the built tool; each awk that is there serves as a baseline. A figure of
# speed on a long file is a ratio of processor times in the same run, so that a busy machine does not spoil it.
#   bench/whole-process.sh [rows of the long file, 1000000 unless told]
set -euo pipefail
export LC_ALL=C TIMEFORMAT='%R %U %S'
cd "$(dirname "$0")/.."
rows=${1:-1000000}
runs=5
work=$(mktemp -d)
tool=''
trap '[ -z "$tool" ] || kill "$tool" 2>/dev/null || true; rm -rf "$work"' EXIT
export XDG_STATE_HOME=$work/state
./slugpeak --version >/dev/null

report() { printf '%-44s %8s %-6s (goal %s %s): %s\n' "$1" "$2" "$3" "$4" "$5" \
  "$(awk -v is="$2" -v sign="$4" -v goal="$5" 'BEGIN { print (sign == "<" ? is < goal : is <= goal) ? "met" : "NOT met" }')"; }

# The least of several runs: what disturbs a start only ever makes it longer.
least() { sort -n | head -n 1; }

wall() { { time "$@" >/dev/null 2>&1; } 2>&1 | awk '{ print $1 }'; }

first_record() {
  echo 0,0.5 >"$work"/one
  mkfifo "$work"/in "$work"/out
  { cat "$work"/one; sleep 20; } >"$work"/in &
  local feeder=$!
  { time until_first_reading; } 2>&1 | awk '{ print $1 }'
  kill "$feeder" 2>/dev/null || true
  wait "$feeder" 2>/dev/null || true
  rm "$work"/in "$work"/out
}

until_first_reading() {
  local line='' watching
  ./slugpeak watch --from - --json <"$work"/in >"$work"/out 2>/dev/null &
  watching=$!
  exec 4<"$work"/out
  while [[ $line != *'"type":"reading"'* ]]; do read -r line <&4 || break; done
  exec 4<&-
  kill "$watching" 2>/dev/null || true
}

processor() { { time "$@" <"$work"/long.csv >"$work"/lines; } 2>&1 | awk '{ printf "%.3f\n", $2 + $3 }'; }

running_maximum='NR > 1 { if (NR == 2 || $2 + 0 > best) best = $2 + 0
  printf "{\"type\":\"reading\",\"t\":%s,\"value\":%s,\"best\":%.17g}\n", $1, $2, best }'

report 'start: --help' "$(for _ in $(seq $runs); do wall ./slugpeak --help; done | least)" s '<=' 0.25
report 'start: first record of watch --from -' "$(for _ in $(seq $runs); do first_record; done | least)" s '<=' 0.35

# A resonance that is swept up and down, with noise: the same rows on every machine.
awk -v rows="$rows" 'BEGIN {
  print "seconds,volts"
  for (i = 0; i < rows; i++) {
    seed = (seed * 16807 + 11) % 2147483647
    x = 3 * sin(i / 2000)
    printf "%.2f,%.5f\n", i / 50, 4 / sqrt(1 + x * x) + 0.005 * (seed / 2147483647 - 0.5)
  }
}' >"$work"/long.csv

ours=$(for _ in 1 2 3; do processor ./slugpeak watch --from "$work"/long.csv --json; done | least)
readings=$(grep -c '"type":"reading"' "$work"/lines)
[ "$readings" = "$rows" ] || { echo "the tool gave $readings readings for $rows rows" >&2; exit 1; }
for awk in mawk gawk busybox; do
  command -v "$awk" >/dev/null || continue
  baseline=("$awk")
  [ "$awk" != busybox ] || baseline=(busybox awk)
  theirs=$(for _ in 1 2 3; do processor "${baseline[@]}" -F, "$running_maximum"; done | least)
  report "$rows rows to JSON, times $awk" "$(awk -v a="$ours" -v b="$theirs" 'BEGIN { printf "%.1f", a / b }')" times '<=' 5
done

if [ -r /proc/self/status ]; then
  mkfifo "$work"/in
  { cat "$work"/long.csv; sleep 20; } >"$work"/in &
  feeder=$!
  ./slugpeak watch --from - --json <"$work"/in >"$work"/lines 2>/dev/null &
  tool=$!
  for _ in $(seq 600); do
    [ "$(grep -c '"type":"reading"' "$work"/lines)" -lt "$rows" ] || break
    sleep 0.2
  done
  report 'most memory held while watching' "$(awk '/^VmHWM/ { printf "%.0f", $2 / 1024 }' /proc/$tool/status)" MB '<' 120
  kill "$tool" "$feeder" 2>/dev/null || true
  wait "$tool" "$feeder" 2>/dev/null || true
  tool=''
fi
