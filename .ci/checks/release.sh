#!/usr/bin/env bash
# The archive without prerequisites and the Debian package, in a root that has no Java, only what every Linux has: the C and C++
# libraries, zlib, a shell, and ALSA for the sound. Demo, a meter on a pseudo-terminal, sound and report; then the package is
# installed, used and removed, and nothing stays behind.
set -euo pipefail
cd "$(dirname "$0")/../.."
if [ "$(id -u)" != 0 ]; then
  echo "release: needs root for chroot; left out"
  exit 0
fi
if ! unshare --mount true 2>/dev/null; then
  echo "release: NOT CHECKED, nothing can be mounted here"
  exit 0
fi
# Mounts of this script end with it.
[ "${1:-}" = inside ] || exec unshare --mount bash "$0" inside
work=$(mktemp -d)
trap 'umount -R "$work/root" 2>/dev/null || true; rm -rf --one-file-system "$work"' EXIT
fail() { echo "release: $*" >&2; tail -n 5 "$work"/err "$work"/out >&2 2>/dev/null || true; exit 1; }

.ci/release -q -DskipTests
archive=$(echo release/target/slugpeak-*-linux-x64.tar.gz)
package=$(echo release/target/slugpeak_*_amd64.deb)
grep -q '"CycloneDX"' release/target/slugpeak-*-bom.json || fail "there is no bill of materials"
(cd release/target && cat slugpeak*.sha256 | sha256sum --quiet -c) || fail "a sum is wrong"

root=$work/root
mkdir -p "$root"/{dev,proc,tmp,home,etc} "$root"/usr/{bin,sbin,lib,lib64} "$root"/var/lib/dpkg/{info,updates}
for folder in bin sbin lib lib64; do ln -s "usr/$folder" "$root/$folder"; done
touch "$root/var/lib/dpkg/status" "$root/var/lib/dpkg/available"
dpkg -L libc6 libgcc-s1 libstdc++6 zlib1g libasound2 libasound2-data | sort -u | while read -r file; do
  if [ -f "$file" ] || [ -L "$file" ]; then echo ".$file"; fi
done | tar -C / -c -T - | tar -x --keep-directory-symlink -C "$root"
cp /bin/busybox "$root/bin/"
mount --bind "$root" "$root"
chroot "$root" /bin/busybox --install -s /bin
mount --bind /dev "$root/dev"
mount -t devpts devpts "$root/dev/pts" 2>/dev/null || mount --bind /dev/pts "$root/dev/pts"
mount -t proc proc "$root/proc"
echo 'root:x:0:0:root:/home:/bin/sh' >"$root/etc/passwd"
cat >"$root/etc/asound.conf" <<'END'
pcm.!default { type plug slave.pcm { type file slave.pcm { type null } file "/tmp/heard.raw" format "raw" } }
END
inside() { chroot "$root" /bin/env -i HOME=/home PATH=/usr/bin:/bin TERM=xterm "$@"; }
! inside sh -c 'command -v java' >/dev/null || fail "there is a Java"

mkdir "$root/home/radio tools"
tar -xzf "$archive" -C "$root/home/radio tools"
tool="/home/radio tools/$(ls "$root/home/radio tools")"
use() { inside "$tool/slugpeak" "$@" >"$work/out" 2>"$work/err" || fail "slugpeak $* ended with $?"; }

use --version
grep -q '^slugpeak [0-9]' "$work/out" || fail "no version"
inside "$tool/runtime/bin/java" -XX:SharedArchiveFile="$tool/slugpeak.jsa" -Xshare:on -XX:+UseSerialGC \
  -m org.slugpeak.cli/org.slugpeak.cli.Main --version >/dev/null || fail "the archive of classes does not fit where it was unpacked"
use demo --speed 20 --cue beat --log /home/demo.jsonl
[ ! -s "$work/err" ] || fail "the demo complains"
grep -q 'left on the table' "$work/out" || fail "the demo found no peak"
[ "$(stat -c %s "$root/tmp/heard.raw")" -gt 100000 ] || fail "nothing was to be heard"
use report /home/demo.jsonl
grep -q '<svg' "$root/home/demo.html" || fail "the report shows nothing"

# A board that prints a number a line, on a pseudo-terminal of the root: up to a peak and down again, and then it is pulled.
python3 - "$root" "$tool" >"$work/out" 2>"$work/err" <<'END' || fail "the meter on a pseudo-terminal was not read"
import os, subprocess, sys, threading, time, tty
root, tool = sys.argv[1:]
os.chroot(root); os.chdir("/")
lead, line = os.openpty()
tty.setraw(line)
env = dict(HOME="/home", PATH="/usr/bin:/bin")
watch = subprocess.Popen([tool + "/slugpeak", "watch", "--from", os.ttyname(line), "--meter", "generic-line", "--json"],
                         env=env, stdout=subprocess.PIPE, text=True)
def talk():
    for step in range(400):
        x = (step - 200) / 40
        os.write(lead, b"%.5f\n" % (1 / (1 + x * x) ** 0.5))
        time.sleep(0.02)
threading.Thread(target=talk, daemon=True).start()
for record in watch.stdout:
    if '"type":"passed"' in record:
        print("passed")
        break
else:
    sys.exit(1)
watch.terminate()
END
grep -q passed "$work/out" || fail "no peak was passed"

list() { (cd "$root" && find . -xdev \( -path ./proc -o -path ./dev -o -path ./home -o -path ./tmp -o -path './var/lib/dpkg/*' \) -prune -o -print | sort); }
list >"$work/before"
dpkg --root="$root" --force-depends --force-not-root --log=/dev/null -i "$package" >"$work/out" 2>"$work/err" || fail "the package is not installed"
for file in usr/bin/slugpeak usr/share/man/man1/slugpeak-watch.1 usr/lib/udev/rules.d/70-slugpeak.rules \
  usr/share/applications/slugpeak.desktop usr/share/bash-completion/completions/slugpeak; do
  [ -e "$root/$file" ] || [ -L "$root/$file" ] || fail "the package has no $file"
done
printf '0.1\n0.5\n0.9\n' | inside slugpeak watch --from - >"$work/out" 2>"$work/err" || fail "the installed tool does not read"
grep -q '0\.900' "$work/out" || fail "the installed tool does not show what it reads"
dpkg --root="$root" --force-depends --log=/dev/null -P slugpeak >"$work/out" 2>"$work/err" || fail "the package is not removed"
list | diff "$work/before" - || fail "something stays behind"
echo "release: $(du -sm "$root$tool" | cut -f1) MB unpacked; demo, a meter, sound, report, package in a root without Java"
