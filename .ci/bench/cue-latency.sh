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

. .ci/lib/pulse.sh

./slugpeak --version >/dev/null
pulse_serve
python3 .ci/bench/cue_latency.py
