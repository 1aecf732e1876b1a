#!/usr/bin/env bash
# How long a reading takes to be heard; to be run by hand on a machine that does nothing else, since other work delays the sound.
# Needs pulseaudio, pulseaudio-utils, libasound2-plugins and python3.
set -euo pipefail
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
daemon=""
finish() {
  [ -z "$daemon" ] || kill "$daemon" 2>/dev/null || true
  rm -rf "$work"
}
trap finish EXIT
export XDG_STATE_HOME="$work/state"
unset SSH_CONNECTION

fail() {
  echo "cue-latency: $*" >&2
  exit 1
}

# until_true SECONDS COMMAND...: waits for a command to succeed.
until_true() {
  local left=$((10 * $1))
  shift
  until "$@" >/dev/null 2>&1; do
    left=$((left - 1))
    [ "$left" -gt 0 ] || return 1
    sleep 0.1
  done
}

mkdir -m 700 "$work/run"
cat >"$work/pulse.pa" <<EOF
load-module module-native-protocol-unix auth-anonymous=1 socket=$work/socket
load-module module-null-sink sink_name=out rate=48000 norewinds=1
set-default-sink out
EOF
cat >"$work/alsa.conf" <<EOF
</usr/share/alsa/alsa.conf>
pcm.!default { type pulse }
ctl.!default { type pulse }
EOF
export PULSE_SERVER="unix:$work/socket" ALSA_CONFIG_PATH="$work/alsa.conf"

serve() {
  XDG_RUNTIME_DIR="$work/run" HOME="$work" pulseaudio -n -F "$work/pulse.pa" --daemonize=no --exit-idle-time=-1 \
    --use-pid-file=no </dev/null >/dev/null 2>&1 &
  daemon=$!
  until_true 20 pactl info || fail "the sound server does not start"
}

./slugpeak --version >/dev/null
serve
python3 .ci/bench/cue_latency.py

