#!/usr/bin/env bash
# Audio from outside the project: WAV files made and measured by sox, and a virtual sound input served by PulseAudio, read
# through the packaged tool. The levels are known from how the files were made; nothing here was made by slugpeak.
set -euo pipefail
cd "$(dirname "$0")/../.."

work=$(mktemp -d)
daemon=""
player=""
tool=""
finish() {
  [ -z "$tool" ] || kill "$tool" 2>/dev/null || true
  [ -z "$player" ] || kill "$player" 2>/dev/null || true
  [ -z "$daemon" ] || kill "$daemon" 2>/dev/null || true
  rm -rf "$work"
}
trap finish EXIT
export XDG_STATE_HOME="$work/state"

fail() { echo "sound: $*" >&2; exit 1; }

watch() { ./slugpeak watch --json --from "$@"; }

# The last value that was read, or "none".
last_value() {
  sed -n 's/.*"type":"reading".*"value":\([-0-9.Ee]*\|null\),.*/\1/p' | sed 's/null/none/' | tail -n 1
}

# expect NAME VALUE WANTED DB: a value within some decibels.
expect() {
  awk -v v="$2" -v w="$3" -v d="$4" 'BEGIN { if (v !~ /^[0-9.]/ || v <= 0) exit 1;
    e = 20 * log(v / w) / log(10); exit !(e < d && e > -d) }' || fail "$1: read $2, made $3"
  echo "sound: $1: $2 FS for $3"
}

# refuse FILE WORDS: status 1, and one line that says so.
refuse() {
  local status=0
  watch "$1" >"$work/out" 2>"$work/err" || status=$?
  [ "$status" = 1 ] || fail "$1: status $status instead of 1"
  [ "$(wc -l <"$work/err")" = 1 ] || fail "$1: not one line: $(cat "$work/err")"
  grep -q "$2" "$work/err" || fail "$1: $(cat "$work/err")"
}

make_wav() { sox -q -D -n -r "$1" "${@:4}" "$work/$2.wav" synth 2 sine "$3" vol 0.25; }

make_wav 48000 s16 412 -c 1 -b 16
make_wav 44100 s24 1000 -c 1 -b 24
make_wav 96000 f32 300 -c 1 -e floating-point -b 32
make_wav 192000 s32 1100 -c 2 -b 32
make_wav 48000 u8 412 -c 1 -b 8
for kind in s16 s24 f32 s32; do
  expect "$kind" "$(watch "$work/$kind.wav" | last_value)" 0.25 0.01
done
expect u8 "$(watch "$work/u8.wav" | last_value)" 0.25 0.1

# RMS as sox measures it, of noise and a tone; a full-scale sine is 1 FS.
sox -q -D -n -r 48000 -b 24 -c 1 "$work/noise.wav" synth 2 whitenoise vol 0.2
sox -q -m -v 1 "$work/noise.wav" -v 1 "$work/s16.wav" -r 48000 -b 24 "$work/mixed.wav" 2>/dev/null
rms=$(sox "$work/mixed.wav" -n trim 1.9 0.1 stat 2>&1 | awk '/^RMS +amplitude/ { print $3 * sqrt(2) }')
expect rms "$(watch "$work/mixed.wav" --mode rms | last_value)" "$rms" 0.01
expect "tone in noise" "$(watch "$work/mixed.wav" | last_value)" 0.25 1
[ "$(watch "$work/noise.wav" | last_value)" = none ] || fail "noise was called a tone"

# 100 Hz hum 20 dB above the tone.
sox -q -D -n -r 48000 -b 24 -c 1 "$work/hum.wav" synth 2 sine 100 vol 0.6
sox -q -D -n -r 48000 -b 24 -c 1 "$work/weak.wav" synth 2 sine 433 vol 0.06
sox -q -D -m -v 1 "$work/hum.wav" -v 1 "$work/weak.wav" -b 24 "$work/hummed.wav"
expect hum "$(watch "$work/hummed.wav" | last_value)" 0.06 0.05

# Overdriven input.
sox -q -D -n -r 48000 -b 16 -c 1 "$work/loud.wav" synth 2 sine 412 vol 2 2>/dev/null
watch "$work/loud.wav" >"$work/out"
grep -q '"type":"overload".*"cause":"clipping"' "$work/out" || fail "clipping was not seen"
grep -q '"topic":"clipping".*sound input clips' "$work/out" || fail "the cause of clipping was not said"

# Files that are not as they should be.
sox -q -n -r 48000 -c 1 -e ms-adpcm "$work/adpcm.wav" synth 1 sine 412
sox -q -n -r 8000 -c 1 -e mu-law "$work/mulaw.wav" synth 1 sine 412
sox -q -n -r 48000 -c 1 -b 16 "$work/short.wav" synth 0.05 sine 412
sox -q -n -r 48000 -c 1 -b 16 "$work/none.wav" trim 0 0
printf 'not audio at all\n' >"$work/text.wav"
refuse "$work/adpcm.wav" 'compressed (Microsoft ADPCM)'
refuse "$work/mulaw.wav" 'compressed (mu-law)'
refuse "$work/short.wav" 'one reading takes'
refuse "$work/none.wav" 'holds no samples'
refuse "$work/text.wav" 'not a WAV file'
refuse "$work/missing.wav" 'does not exist'
head -c 100000 "$work/s16.wav" >"$work/cut.wav"
watch "$work/cut.wav" >"$work/out"
grep -q 'cut short' "$work/out" || fail "a file cut short was not told"
expect "cut short" "$(last_value <"$work/out")" 0.25 0.01
sox -q -D -n -r 48000 -b 16 -c 1 -t wav - synth 2 sine 412 vol 0.25 2>/dev/null | cat >"$work/piped.wav"
expect "from a pipe" "$(watch "$work/piped.wav" | last_value)" 0.25 0.01

# A sound input of this machine: a null sink plays a tone, its monitor is the input; the server dies and comes back.
. .ci/lib/pulse.sh
sox -q -D -n -r 48000 -b 16 -c 1 "$work/long.wav" synth 60 sine 412 vol 0.25

serve() {
  pulse_serve
  paplay -d bench "$work/long.wav" 2>/dev/null &
  player=$!
}

heard() { grep -c '"value":0\.2[45][0-9.]*,.*"condition":"ok"' "$work/live" | awk -v n="$1" '{ exit !($1 >= n) }'; }

serve
# Not through the function: the signal at the end must reach the tool itself.
./slugpeak watch --json --from sound >"$work/live" 2>"$work/err" &
tool=$!
until_true 40 heard 25 || fail "the tone was not heard: $(tail -n 3 "$work/live") $(cat "$work/err")"
kill "$player" "$daemon" 2>/dev/null || true
until_true 20 grep -q '"type":"link".*"state":"lost"' "$work/live" || fail "the loss of the input was not told"
serve
until_true 30 grep -q '"type":"link".*"state":"resumed"' "$work/live" || fail "the input was not opened again"
again=$(($(grep -c '"condition":"ok"' "$work/live") + 25))
until_true 40 heard "$again" || fail "the tone was not heard again"
kill -TERM "$tool"
until_true 20 grep -q '"type":"end"' "$work/live" || fail "the session was not closed"
median=$(sed -n 's/.*"type":"reading".*"value":\(0\.[0-9]*\),.*/\1/p' "$work/live" | sort -n | awk '{ v[NR] = $1 } END { print v[int((NR + 1) / 2)] }')
expect "sound input" "$median" 0.25 0.05

# Calibrated against a known voltage, the same tone reads in volts.
kill "$player" 2>/dev/null || true
paplay -d bench "$work/long.wav" 2>/dev/null &
player=$!
./slugpeak check --from sound --volts 0.400 >"$work/out" || fail "the input was not calibrated: $(cat "$work/out")"
grep -q '^kept in ' "$work/out" || fail "where the calibration is kept was not said"
./slugpeak watch --json --from sound >"$work/live" 2>"$work/err" &
tool=$!
volts() { grep -c '"value":0\.\(39\|40\)[0-9.]*,.*"condition":"ok"' "$work/live" | awk '{ exit !($1 >= 10) }'; }
until_true 40 volts || fail "the calibrated input does not read 0.400 V: $(tail -n 2 "$work/live") $(cat "$work/err")"
grep -q '"type":"session".*"unit":"V"' "$work/live" || fail "the unit of a calibrated input is not V"
kill -TERM "$tool"
wait "$tool" 2>/dev/null || true
tool=""
echo "sound: calibrated to 0.400 V, reads volts"
echo "sound: all as made"
