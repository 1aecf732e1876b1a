#!/usr/bin/env bash
# The index of sessions on a real PostgreSQL, in a private cluster: two benches that write at once lose nothing, a table that was
# dropped is made again, a server that is away is said in one line, and the password is nowhere. Then two processes at once with an index of their own.
set -euo pipefail
cd "$(dirname "$0")/../.."
tool=${SLUGPEAK:-./slugpeak}
bin=$(ls -d /usr/lib/postgresql/*/bin | sort -V | tail -1)
work=$(mktemp -d)
password=never-to-be-shown-4711
as() { "$@"; }
if [ "$(id -u)" = 0 ]; then as() { runuser -u postgres -- "$@"; }; chown postgres "$work"; fi
chmod 755 "$work"
cleanup() {
  wait
  as "$bin"/pg_ctl -D "$work"/cluster -m immediate stop >/dev/null 2>&1 || true
  rm -rf "$work"
}
trap cleanup EXIT
fail() {
  echo "sessions: $*" >&2
  exit 1
}

echo "$password" >"$work"/password
chmod 644 "$work"/password
as "$bin"/initdb -D "$work"/cluster -U club -A scram-sha-256 --pwfile="$work"/password --no-sync >/dev/null
port=$((20000 + RANDOM % 20000))
as "$bin"/pg_ctl -D "$work"/cluster -w -l "$work"/cluster/server.log \
  -o "-p $port -c listen_addresses=127.0.0.1 -c unix_socket_directories=$work -c fsync=off" start >/dev/null
ask() { PGPASSWORD=$password "$bin"/psql -h 127.0.0.1 -p "$port" -U club -d "$1" -tAc "$2"; }
ask postgres "create database records" >/dev/null

for bench in left right; do
  mkdir -p "$work/$bench/state/slugpeak" "$work/$bench/logs"
  printf 'sessions = "%s"\nindex = "postgresql://club:%s@127.0.0.1:%s/records"\nbench = "%s"\n' \
    "$work/$bench/logs" "$password" "$port" "$bench" >"$work/$bench/state/slugpeak/settings.toml"
done

# Logs FROM to TO of a bench.
logs() {
  /usr/bin/python3 - "$work/$1/logs" "$2" "$3" <<'PYTHON'
import sys
folder, first, last = sys.argv[1], int(sys.argv[2]), int(sys.argv[3])
for i in range(first, last):
    with open(f"{folder}/{i:04}.jsonl", "w") as log:
        log.write('{"type":"session","version":1,"startedAt":"2026-%02d-%02dT09:00:00Z","source":"sim","quantity":"dc voltage","unit":"V",'
                  '"seek":"peak","dwell":2,"tool":"slugpeak"}\n' % (1 + i % 12, 1 + i % 28))
        log.write('{"type":"mark","t":0,"text":"serial=%d"}\n' % (20000 + i))
        log.write('{"type":"end","t":0,"readings":0,"reason":"quit"}\n')
PYTHON
}
sessions() {
  local bench=$1
  shift
  XDG_STATE_HOME="$work/$bench/state" "$tool" sessions "$@"
}

for round in 1 2 3; do
  for bench in left right; do logs $bench $(((round - 1) * 200)) $((round * 200)); done
  sessions left >"$work"/left.out 2>"$work"/left.err &
  left=$!
  sessions right >"$work"/right.out 2>"$work"/right.err &
  right=$!
  wait $left || fail "the left bench failed in round $round: $(cat "$work"/left.err)"
  wait $right || fail "the right bench failed in round $round: $(cat "$work"/right.err)"
  count=$(ask records "select count(distinct bench || '/' || file) from slugpeak_sessions_2")
  [ "$count" = $((round * 400)) ] || fail "$count of $((round * 400)) sessions are in the index after round $round"
done
found=$(sessions left --serial 20123 2>/dev/null)
grep -q 'left: 0123.jsonl' <<<"$found" && grep -q 'right: 0123.jsonl' <<<"$found" || fail "not both benches are found: $found"

ask records "drop table slugpeak_logs_2, slugpeak_sessions_2" >/dev/null
sessions left --export "$work"/left.zip >/dev/null 2>"$work"/left.err || fail "a dropped table is not made again: $(cat "$work"/left.err)"
[ "$(ask records "select count(*) from slugpeak_sessions_2")" = 600 ] || fail "not all is there again"
[ "$(unzip -p "$work"/left.zip sessions.jsonl | wc -l)" = 600 ] || fail "the export has not all sessions"

sed -i "s/$password/$password-wrong/" "$work"/right/state/slugpeak/settings.toml
! sessions right >"$work"/wrong.out 2>"$work"/wrong.err || fail "a wrong password was taken"
as "$bin"/pg_ctl -D "$work"/cluster -m fast stop >/dev/null
! sessions left >"$work"/away.out 2>"$work"/away.err || fail "a server that is away was not missed"
for said in wrong away; do
  [ "$(wc -l <"$work/$said.err")" = 1 ] || fail "not one line is said: $(cat "$work/$said.err")"
done
! grep -rl --exclude=settings.toml --exclude=password "$password" "$work"/*.err "$work"/*.out "$work"/left/state "$work"/right/state ||
  fail "the password is where it has no business to be"

export XDG_STATE_HOME=$work/own
"$tool" sessions --folder "$work"/left/logs >"$work"/one.out 2>"$work"/one.err &
one=$!
"$tool" sessions --folder "$work"/left/logs >"$work"/two.out 2>"$work"/two.err || fail "two at once: $(cat "$work"/two.err)"
wait $one || fail "two at once: $(cat "$work"/one.err)"
cmp -s "$work"/one.out "$work"/two.out || fail "two at once see different things"
echo "sessions: all as it should be"
