# A sound server of one's own with a null sink "bench", whose monitor is the sound input. To be sourced by a script that has the
# folder $work and the function fail; `pulse_serve` starts the server and leaves its process in $daemon.
mkdir -m 700 "$work/run"
cat >"$work/pulse.pa" <<EOF
load-module module-native-protocol-unix auth-anonymous=1 socket=$work/socket
load-module module-null-sink sink_name=bench rate=48000 norewinds=1
set-default-sink bench
set-default-source bench.monitor
EOF
cat >"$work/alsa.conf" <<EOF
</usr/share/alsa/alsa.conf>
pcm.!default { type pulse }
ctl.!default { type pulse }
EOF
export PULSE_SERVER="unix:$work/socket" ALSA_CONFIG_PATH="$work/alsa.conf"

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

pulse_serve() {
  XDG_RUNTIME_DIR="$work/run" HOME="$work" pulseaudio -n -F "$work/pulse.pa" --daemonize=no --exit-idle-time=-1 \
    --use-pid-file=no </dev/null >/dev/null 2>&1 &
  daemon=$!
  until_true 20 pactl info || fail "the sound server does not start"
}
