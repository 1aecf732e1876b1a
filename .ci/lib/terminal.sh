# A real terminal (tmux) for the checks that source this from the top folder of the project: what it shows, and keys typed into it.
# Sets $work, a folder that goes away at the end.
export LC_ALL=C.UTF-8
unset NO_COLOR COLORTERM SSH_CONNECTION
work=$(mktemp -d)
server=slugpeak-check-$$
trap 'tmux -L "$server" kill-server 2>/dev/null || true; rm -rf "$work"' EXIT

./slugpeak --version >/dev/null

fail() {
  echo "$(basename "$0" .sh): $*" >&2
  tmux -L "$server" capture-pane -p >&2 2>/dev/null || true
  exit 1
}

shown() { tmux -L "$server" capture-pane -p; }
type_in() { tmux -L "$server" send-keys "$@"; }

# Waits, on a busy machine as long as it takes within reason, until the window shows a text.
see() {
  for _ in $(seq 600); do
    if shown | grep -qF -- "$1"; then return; fi
    sleep 0.1
  done
  fail "never showed: $1"
}

never_see() { if shown | grep -qF -- "$1"; then fail "shows: $1"; fi; }

open_window() {
  tmux -L "$server" kill-server 2>/dev/null || true
  for _ in $(seq 50); do
    tmux -L "$server" -f /dev/null new-session -d -x "$1" -y "$2" "env PS1='ready> ' bash --norc" 2>/dev/null && break
    sleep 0.1
  done
  see 'ready>'
}

resize() { tmux -L "$server" resize-window -x "$1" -y "$2"; }
