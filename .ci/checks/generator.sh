#!/usr/bin/env bash
# A simulated generator at a network port and at a pseudo-terminal: an SCPI library that others wrote (PyVISA) sets it and reads it, before, while
# and after the packaged tool takes a curve and carries out a whole stage with it. However the tool ends, that library reads that the output is off.
set -euo pipefail
cd "$(dirname "$0")/../.."
. .ci/lib/terminal.sh

bench=$work/bench
mkdir "$bench"
/usr/bin/python3 .ci/lib/scpi_generator.py "$bench" &
generator=$!
trap 'kill $generator 2>/dev/null || true; tmux -L "$server" kill-server 2>/dev/null || true; rm -rf "$work"' EXIT
for _ in $(seq 100); do [ -e "$bench"/port ] && [ -e "$bench"/tty ] && break; sleep 0.1; done
port=$(cat "$bench"/port)

look() { /usr/bin/python3 .ci/lib/scpi_look.py "$@"; }
network="TCPIP::127.0.0.1::$port::SOCKET"

# How somebody left it: on, at another frequency, with much signal.
left_on() {
  local stands
  stands=$(look "$network" ':FREQ 1.234e6;:POW -20' 'OUTPut:STATe ON')
  [ "$stands" = '1234000 -20.0 1 +0,"No error"' ] || fail "PyVISA set it and read: $stands"
  : >"$bench"/log
}

# It was on for the session, is off after it, and nothing that it was told was an error.
is_off() {
  cut -f 4 "$bench"/log | grep -q on || fail "$1: was never on"
  local stands
  stands=$(look "$network")
  case $stands in
    *' 0 +0,"No error"') ;;
    *) fail "$1: PyVISA reads $stands" ;;
  esac
}

for address in "tcp:127.0.0.1:$port" "$bench/tty"; do
  echo "generator: $address: looked at, a curve, a whole stage"
  left_on
  ./slugpeak check --generator "$address" >"$work"/check.txt
  grep -q 'SG-40' "$work"/check.txt || fail "check did not say who it is"
  left_on
  ./slugpeak curve --from sim:aligned --speed 20 --span 446..464 --step 3 --generator "$address" --generator-level -73dBm \
    --log "$work"/curve.jsonl >"$work"/curve.txt 2>"$work"/curve.err || fail "the curve: $(cat "$work"/curve.err)"
  grep -q 'put the generator back' "$work"/curve.err && fail "somebody was told to put back what obeys"
  [ "$(cut -f 1 "$bench"/log | grep -c '^SOURce:FREQuency 4[0-9]*$')" -ge 7 ] || fail "not every point was set"
  is_off "curve at $address"
  left_on
  ./slugpeak align tarnfield-54a --only "AM IF" --from sim:plan --speed 10 --view none --generator "$address" \
    --log "$work"/align.jsonl 2>"$work"/align.err &
  tool=$!
  for _ in $(seq 600); do grep -q '"type":"adjuster"' "$work"/align.jsonl 2>/dev/null && break; sleep 0.1; done
  look "$network" | grep -q '^455000 .* 1 ' || fail "beside the tool PyVISA reads $(look "$network")"
  wait $tool || fail "the stage: $(cat "$work"/align.err)"
  grep -q 'the plan is through' "$work"/align.err || fail "the stage: $(cat "$work"/align.err)"
  is_off "align at $address"
  rm -f "$work"/curve.jsonl "$work"/align.jsonl
done

# Signals: INT is what Ctrl-C sends, HUP a terminal that was closed.
for signal in INT HUP TERM; do
  echo "generator: told to stop by $signal"
  left_on
  env --default-signal=INT,HUP,TERM ./slugpeak align tarnfield-54a --only "AM IF" --from sim:plan --view none --generator "tcp:127.0.0.1:$port" \
    2>"$work"/ended.err &
  tool=$!
  for _ in $(seq 600); do grep -q 'on$' "$bench"/log && grep -q '455000' "$bench"/log && break; sleep 0.1; done
  kill -"$signal" "$tool"
  code=0
  wait $tool || code=$?
  [ $code -ne 0 ] || fail "$signal: left with 0"
  is_off "$signal"
done

echo "generator: q, and a terminal that is closed"
for end in q close; do
  left_on
  open_window 80 24
  type_in "./slugpeak align tarnfield-54a --only 'AM IF' --from sim:plan --cue off --generator 'tcp:127.0.0.1:$port'; echo left with \$?" Enter
  for _ in $(seq 600); do grep -q '455000.*on$' "$bench"/log && break; sleep 0.1; done
  if [ $end = q ]; then type_in q; see 'left with'; else tmux -L "$server" kill-server; fi
  for _ in $(seq 100); do tail -n 1 "$bench"/log | grep -q 'LOCal' && break; sleep 0.1; done
  is_off "$end"
done

echo "generator: the meter is lost, and the readings end"
mkfifo "$work"/meter
left_on
./slugpeak curve --from - --span 454..456 --no-rest --generator "tcp:127.0.0.1:$port" <"$work"/meter >/dev/null 2>"$work"/lost.err &
tool=$!
exec 7>"$work"/meter
for i in $(seq 30); do echo 0.5 >&7; sleep 0.05; done
for _ in $(seq 600); do grep -q '455000.*on$' "$bench"/log && break; echo 0.5 >&7; sleep 0.1; done
exec 7>&-
wait $tool && fail "a curve that was not finished left with 0"
is_off "readings ended"
kill -0 "$generator"
