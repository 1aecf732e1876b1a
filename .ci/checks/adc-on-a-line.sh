#!/usr/bin/env bash
# End to end: the real firmware on a simulated chip, its serial line on a pseudo-terminal, the packaged tool watching it while
# a slug is turned. The tool must say the peak where it was, agree with the voltage that was fed, and believe no damaged line.
set -euo pipefail
cd "$(dirname "$0")/../.."
firmware=hardware-notes/adc-firmware
work=$(mktemp -d)
board='' tool=''
trap 'kill $board $tool 2>/dev/null || true; rm -rf "$work"' EXIT

make --silent -C "$firmware" all build/on-a-line
./slugpeak --version >/dev/null

fail() { echo "end to end: $*" >&2; tail -n 20 "$work"/errors >&2 || true; exit 1; }

plug_in() {
  rm -f "$work"/sent.csv "$work"/link
  "$firmware"/build/on-a-line -l "$work"/link -o "$work"/sent.csv "$@" "$firmware"/build/slugpeak-adc.elf &
  board=$!
  for _ in $(seq 100); do [ -e "$work"/link ] && return; sleep 0.1; done
  fail "the simulated board did not come up"
}

# Plugs the board in, watches it until it is unplugged, and stops the tool as a user would.
watch_board() {
  plug_in "$@"
  ./slugpeak watch --from "$work"/link --meter slugpeak-adc --json >"$work"/records 2>"$work"/errors &
  tool=$!
  wait "$board" || fail "the simulated board stopped with an error"
  kill -TERM "$tool"
  wait "$tool" || true
  board='' tool=''
  jq -e . "$work"/records >/dev/null || fail "the records are not JSON"
}

# Each reading is one of the lines sent, undamaged, in its place; it agrees with the voltage fed; no undamaged line is missing.
# Prints the board's time at the first reading, the number of readings, and the number of damaged lines among them.
compare() {
  jq -r 'select(.type == "reading") | [.t, .value] | @tsv' "$work"/records >"$work"/readings
  awk -v scale=4.5776e-04 -v stated=0.060 '
    function size(x) { return x < 0 ? -x : x }
    FNR == NR { split($0, f, ","); seconds[FNR] = f[1]; volts[FNR] = f[2] * scale; fed[FNR] = f[4]; clean[FNR] = f[5]; rows = FNR; next }
    { t[++n] = $1; value[n] = $2 }
    function fits(first,   i, row) {
      row = first
      for (i = 1; i <= n; i++) {
        while (row <= rows && seconds[row] - seconds[first] < t[i] - t[1] - 0.0005) {
          if (clean[row]) return 0
          row++
        }
        if (row > rows || size(seconds[row] - seconds[first] - (t[i] - t[1])) > 0.0005) return 0
        if (!clean[row] || size(volts[row] - value[i]) > 1e-9) return 0
        row++
      }
      last = row - 1
      return 1
    }
    END {
      for (first = 1; first <= rows && !fits(first); first++) { }
      if (!n || first > rows) { print "the readings are not the lines that were sent" > "/dev/stderr"; exit 1 }
      for (row = first; row <= last; row++) {
        damaged += !clean[row]
        off = size(volts[row] - fed[row])
        if (clean[row] && off > worst) worst = off
      }
      if (worst > stated) { print "a reading is " worst " V off what was fed" > "/dev/stderr"; exit 1 }
      printf "%.6f %d %d %.4f\n", seconds[first] - t[1], n, damaged, worst
    }' FS=, "$work"/sent.csv FS='\t' "$work"/readings
}

# A record of a type, once, with its board time between two moments of the story.
said_once_between() {
  local type=$1 from=$2 to=$3
  jq -se --arg type "$type" --argjson zero "$zero" --argjson from "$from" --argjson to "$to" \
    '[.[] | select(.type == $type)] | length == 1 and (.[0].t + $zero >= $from) and (.[0].t + $zero <= $to)' \
    "$work"/records >/dev/null ||
    fail "expected one \"$type\" between $from s and $to s: $(grep "\"$type\"" "$work"/records || echo none)"
}

story() {
  watch_board "$@"
  read -r zero readings damaged worst < <(compare) || fail "the readings are not right"
  [ "$readings" -ge 400 ] || fail "only $readings readings"
  # The slug goes through its peak at 5.0 s and turns back at 6.25 to 6.75 s; it is at the peak again, for good, at 8.5 s.
  said_once_between passed 5.0 6.75
  said_once_between returned 8.0 10.5
  said_once_between held 9.0 13.5
  jq -se --argjson zero "$zero" '[.[] | select(.type == "passed")][0]
      | (.best + 1.82 | fabs) <= 0.06 and (.bestAt + $zero - 5.0 | fabs) <= 0.4' "$work"/records >/dev/null ||
    fail "the best is not the peak that was fed: $(grep '"passed"' "$work"/records)"
  [ "$(jq -r 'select(.type == "overload" or .type == "two-peaks") | .type' "$work"/records)" = '' ] || fail "false alarm"
  [ "$(tail -n 1 "$work"/records | jq -r .type)" = end ] || fail "the session was not closed"
}

# slugpeak check on a steady input: each of the named figures stands beside its bound and meets it.
check_board() {
  local hum=$1 name
  shift
  local fed=()
  [ "$hum" = 0 ] || fed=(--hum "$hum")
  plug_in -t 60 -v -1.2 -h "$hum"
  ./slugpeak check --from "$work"/link --meter slugpeak-adc --seconds 12 "${fed[@]}" \
    >"$work"/report 2>"$work"/errors || fail "check ended with an error"
  kill "$board"
  wait "$board" || true
  board=''
  for name in "$@"; do
    grep -q "^ *$name .*should be .*: it is$" "$work"/report || fail "check: $name: $(cat "$work"/report)"
  done
}

check_board 0 rate jitter noise 'effective bits'
sed -n '/should be/p' "$work"/report
check_board 6.3 'hum rejection'
grep 'hum rejection' "$work"/report

story
[ "$damaged" = 0 ] || fail "$damaged lines damaged on a line without errors"
echo "end to end: $readings readings, at most $worst V off the voltage fed; peak, return and hold said in their time"

story -f 0.005
[ "$damaged" -ge 20 ] || fail "only $damaged lines were damaged"
counted=$(jq -s '[.[] | select(.topic == "not-a-reading") | .amount] | max // 0' "$work"/records)
# Not exactly the same: a flipped line end makes one bad line of two, a byte flipped to a line end makes two of one.
[ "$counted" -ge $((damaged * 4 / 5 - 3)) ] && [ "$counted" -le $((damaged * 6 / 5 + 3)) ] ||
  fail "$damaged lines were damaged, the tool counted $counted"
echo "end to end with flipped bits: $damaged lines damaged, $counted counted, none believed; $readings readings, peak said in its time"
