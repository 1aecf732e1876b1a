#!/usr/bin/env bash
# The packaged tool on a real terminal (tmux): what it shows at several sizes, while the window changes, without colour, on a
# dumb terminal, while standard input carries the readings; that it gives the terminal back; that it ends when the terminal
# goes. Then two whole demonstrations: one with the sound off, one with the screen off.
set -euo pipefail
cd "$(dirname "$0")/../.."
. .ci/lib/terminal.sh

# Readings past a peak and back, as they would come through a pipe; then silence until the pipe is closed.
awk 'BEGIN { for (i = 0; i <= 400; i++) { t = i / 50; x = t < 4 ? -1.5 + t / 1.6 : 1 - (t - 4) / 4;
  printf "%.2f,%.5f\n", t, 0.8 / sqrt(1 + x * x) } }' >"$work"/readings.csv
mkfifo "$work"/pipe

echo "screen: a demonstration at three sizes, resized while it runs"
open_window 80 24
type_in "./slugpeak demo --cue off; echo left with \$?" Enter
see 'q quit'
see 'below best'
see 'space mark'
resize 40 12
see 'BEST'
see 'q quit'
see 'r next'
resize 200 60
see 'BEST  dB'
see '24     '
see 'q quit'
type_in q
see 'left with 0'
never_see 'q quit'
type_in "stty -a | grep -o ' icanon.*echo ' | tr -d '\n'; echo '<modes'" Enter
see ' echo <modes'

echo "screen: keys from the terminal while standard input carries the readings"
open_window 80 24
type_in "cat '$work'/readings.csv '$work'/pipe | ./slugpeak watch --from - --cue off --log '$work'/log.jsonl; echo left with \$?" Enter
see 'below best'
type_in Space
see 'mark 1'
type_in r
see 'adjuster 2'
see 'NO NEW READINGS: no reading for'
tmux -L "$server" capture-pane -p -e | grep -q '48;5;208' || fail "no coloured panel where colours are known"
type_in q
# The pipe is closed only when the session has ended, so that it cannot be the pipe that ends it.
for _ in $(seq 300); do
  if grep -q '"type":"end"' "$work"/log.jsonl; then break; fi
  sleep 0.1
done
: >"$work"/pipe
see 'left with 0'
grep -q '"type":"end".*"reason":"quit"' "$work"/log.jsonl || fail "the log was not closed properly"

echo "screen: a response curve by hand, whose points are taken with a key"
open_window 80 24
type_in "clear; cat '$work'/pipe | ./slugpeak curve --from - --span 454..456 --no-rest --dwell 0 --log '$work'/curve.jsonl; echo left with \$?" Enter
exec 3<>"$work"/pipe
steady() { for _ in $(seq 30); do awk -v level="$1" 'BEGIN { for (i = 0; i < 10; i++) print level + i % 2 / 1000 }' >&3; sleep 0.1; done; }
steady 0.5
see '1 of 3'
see 'set 454.00 kHz, and let it stand'
see 'r next'
resize 40 12
see 'q quit'
type_in n
steady 0.5
see '454.00 kHz reads'
see '2 of 3'
resize 200 60
type_in n
steady 0.8
see '3 of 3'
type_in p
steady 0.8
see '2 of 3'
type_in n
steady 0.8
see '3 of 3'
type_in n
steady 0.4
see 'left with 0'
exec 3>&-
never_see 'q quit'
[ "$(grep -c '"topic":"curve-point"' "$work"/curve.jsonl)" = 4 ] || fail "the points are not in the log"

echo "screen: without colour"
open_window 80 24
type_in "NO_COLOR=1 ./slugpeak demo --cue off; echo left with \$?" Enter
see 'below best'
if tmux -L "$server" capture-pane -p -e | grep -qE '[34]8;5|\[(3|4)[0-7]m'; then fail "colours in spite of NO_COLOR"; fi
type_in C-c
see 'left with 130'

echo "screen: a dumb terminal gets plain lines"
open_window 80 24
type_in "clear; TERM=dumb ./slugpeak demo --speed 50 --cue off; echo left with \$?" Enter
see 'left with 0'
see 'readings: source ended'

echo "screen: the end of the terminal is the end of the session"
open_window 80 24
type_in "./slugpeak watch --from sim --cue off --log '$work'/gone.jsonl" Enter
see 'below best'
tmux -L "$server" kill-server
for _ in $(seq 300); do
  if grep -q '"type":"end"' "$work"/gone.jsonl; then break; fi
  sleep 0.1
done
grep -q '"type":"end"' "$work"/gone.jsonl || fail "still running without a terminal"

echo "screen: a whole demonstration with the sound off"
open_window 80 24
type_in "./slugpeak demo --speed 50 --cue off --log '$work'/silent.jsonl; echo left with \$?" Enter
see 'left with 0'
see 'left on the table'
[ "$(grep -c '"type":"held"' "$work"/silent.jsonl)" -ge 4 ] || fail "fewer than four adjusters were held"

echo "screen: a whole demonstration with the screen off"
./slugpeak demo --speed 50 --plain --cue-wav "$work"/cue.wav >"$work"/plain 2>"$work"/errors
[ "$(grep -c '^held: recorded' "$work"/plain)" -ge 4 ] || fail "fewer than four adjusters were held in plain lines"
grep -q '^past it: back' "$work"/plain || fail "plain lines do not say when it is past"
if grep -q $'\033' "$work"/plain; then fail "escape codes in plain lines"; fi
[ "$(head -c 4 "$work"/cue.wav)" = RIFF ] || fail "no WAV file of the cues"
[ "$(stat -c %s "$work"/cue.wav)" -gt 1000000 ] || fail "the WAV file of the cues is too short"
echo "screen: all as it should be"
