#!/usr/bin/env bash
# The sound server is killed under a session that is heard: the tool says so in one line, goes on with the bell, loses no reading,
# and sounds again when the server is back.
set -euo pipefail
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
daemon=""
tool=""
finish() {
  exec 3>&- || true
  [ -z "$tool" ] || kill "$tool" 2>/dev/null || true
  [ -z "$daemon" ] || kill "$daemon" 2>/dev/null || true
  rm -rf "$work"
}
trap finish EXIT
export XDG_STATE_HOME="$work/state"
unset SSH_CONNECTION

fail() {
  echo "cue-loss: $*" >&2
  exit 1
}

. .ci/lib/pulse.sh

./slugpeak --version >/dev/null
pulse_serve

mkfifo "$work/readings"
./slugpeak watch --from - --cue pitch --json --volume 8 <"$work/readings" >"$work/records" 2>"$work/errors" &
tool=$!
exec 3>"$work/readings"

plays() { pactl list short sink-inputs | grep -q .; }
feed() { for _ in $(seq "$1"); do echo 0.5 >&3; sleep 0.02; done; }
count() { grep -c '"type":"reading"' "$work/records" || true; }
more_than() { [ "$(count)" -gt "$1" ]; }

feed 50
until_true 20 plays || fail "nothing plays: $(cat "$work/errors")"
until_true 40 more_than 49 || fail "the session does not start"
kill "$daemon"
wait "$daemon" 2>/dev/null || true
until_true 20 grep -q 'the sound output has gone: the bell rings until it is back' "$work/errors" \
  || fail "the loss of the sound was not told: $(cat "$work/errors")"
feed 50
until_true 20 more_than 99 || fail "the session stood still without sound"
pulse_serve
until_true 30 grep -q 'sound is back' "$work/errors" || fail "the sound did not come back: $(cat "$work/errors")"
until_true 20 plays || fail "nothing plays after the server came back"
exec 3>&-
status=0
wait "$tool" || status=$?
tool=""
[ "$status" = 0 ] || fail "the session ended with $status"
[ "$(grep -c 'the sound output has gone' "$work/errors")" = 1 ] || fail "more than one line about the loss"
grep -q '"type":"end"' "$work/records" || fail "the session was not closed"
[ "$(count)" = 100 ] || fail "readings were lost: $(count) of 100"
echo "cue-loss: sound lost and back, no reading lost"
