#!/usr/bin/env bash
# The packaged tool on a real terminal (tmux) with a meter whose place it was told: the keys 0, x, h, c and d, as somebody presses
# them at the bench. The set is played here: it rests at -0.22 V, and each move is answered by the reading that it should cause.
set -euo pipefail
cd "$(dirname "$0")/../.."
. .ci/lib/terminal.sh

mkfifo "$work"/meter
now=0

# A meter that reads so many volts for so many seconds, 50 readings a second.
volts() {
  awk -v from="$now" -v seconds="$2" -v volts="$1" 'BEGIN { srand(from + 1)
    for (i = 1; i <= seconds * 50; i++) printf "%.2f,%.5f\n", from + i / 50, volts + (rand() - 0.5) * 0.002 }' >&7
  now=$(awk -v from="$now" -v seconds="$2" 'BEGIN { printf "%.2f", from + seconds }')
}

# The key is heard, and said on the screen, before the next reading is sent.
press() {
  type_in "$1"
  see "$2"
}

# How often the user has said done, as the log has it: the screen says the word all the time.
done_said() { grep -c '"text":"level: done"' "$work"/log.jsonl || true; }

press_done() {
  local before
  before=$(done_said)
  type_in d
  for _ in $(seq 600); do
    [ "$(done_said)" -gt "$before" ] && return
    sleep 0.1
  done
  fail "d was not heard"
}

open_window 100 30
type_in "./slugpeak watch --from - --point detector --cue off --log '$work'/log.jsonl <'$work'/meter; echo left with \$?" Enter
exec 7<>"$work"/meter
volts -1.02 2
see 'below best'

echo "level-keys: 0 takes the resting reading"
press 0 'check of rest'
volts -1.02 2
see "turn the generator's output off"
volts -0.22 3
see "put the generator's output back on"
volts -1.02 3
see 'go on'

echo "level-keys: x halves the generator twice and finds that the reading follows"
press x 'check of level'
volts -1.02 2
see 'halve the generator'
volts -0.62 3
see 'halve it once more'
volts -0.42 3
see 'put the generator back up, times 4'
volts -1.02 3
see 'go on'
grep -q '"topic":"level-check","text":"the reading follows the generator (1.0' "$work"/log.jsonl || fail "no verdict of the level check"

echo "level-keys: c starts the loading check, d says that the resistor is in, and out again"
press c 'check of loading'
volts -1.02 2
see 'put 1 Mohm in series with the meter lead'
press_done
volts -0.95 3
see 'take the resistor out again'
press_done
see 'go on'
volts -1.02 2

echo "level-keys: h announces that the generator is halved: the best goes on"
press h 'now the generator goes to 0.5000 times'
volts -0.62 3
see 'the reading followed the generator by -6.0 dB: the best goes on'

echo "level-keys: the detector leaves its window, and less is asked for"
volts -1.92 3
see 'halve the generator'

type_in q
see 'left with 0'
./slugpeak replay "$work"/log.jsonl --json >"$work"/again.jsonl
cmp "$work"/log.jsonl "$work"/again.jsonl || fail "a replay says something else"
echo "level-keys: all as it should be"
