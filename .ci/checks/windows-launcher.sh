#!/usr/bin/env bash
# slugpeak.cmd in the command interpreter of Wine, among Javas that are folders with the file that tells their version: which of them it
# takes, with which command line, and what it says where there is none. Wine is large and not among the packages of .ci/packages.
set -euo pipefail
cd "$(dirname "$0")/../.."
wine=$(command -v wine64 || command -v wine || ls /usr/lib/wine/wine64 2>/dev/null || true)
if [ -z "$wine" ]; then
  echo "windows launcher: NOT CHECKED, there is no wine64"
  exit 0
fi
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export WINEPREFIX=$work/wine WINEDEBUG=-all DISPLAY=
"$wine" wineboot --init >/dev/null 2>&1 || true
c=$WINEPREFIX/drive_c

# java FOLDER VERSION
java() {
  mkdir -p "$c/$1/bin"
  cp "$c/windows/system32/hostname.exe" "$c/$1/bin/java.exe"
  printf 'JAVA_RUNTIME_VERSION="0"\r\nJAVA_VERSION="%s"\r\nJAVA_VERSION_DATE="x"\r\n' "$2" >"$c/$1/release"
}
java 'j/jdk 11 (x86)' 11.0.20
java j/jdk17 17.0.15
java j/jdk8 1.8.0_301
java 'Program Files/Some Maker/jre-21' 21-ea
mkdir -p "$c/radio tools/lib"
touch "$c/radio tools/lib/slugpeak-cli.jar"
# What would be started is shown instead.
sed 's/^"%java%" -XX/echo "%java%" -XX/; s/$/\r/' slugpeak.cmd >"$c/radio tools/slugpeak.cmd"

cat >"$work/script" <<'END'
@echo off
set PATH=C:\windows\system32
call "C:\radio tools\slugpeak.cmd" common "a b.jsonl"
set "JAVA_HOME=C:\j\jdk17"
call "C:\radio tools\slugpeak.cmd" home "C:\my logs\x.csv"
set "JAVA_HOME=C:\j\jdk 11 (x86)"
set "PATH=C:\windows\system32;C:\j\jdk17\bin"
call "C:\radio tools\slugpeak.cmd" path
set "PATH=C:\windows\system32"
set "ProgramFiles=C:\nothing"
call "C:\radio tools\slugpeak.cmd" old
set "JAVA_HOME=C:\j\jdk8"
call "C:\radio tools\slugpeak.cmd" older
set JAVA_HOME=
call "C:\radio tools\slugpeak.cmd" none
echo ended with %errorlevel%
END
sed 's/$/\r/' "$work/script" >"$c/try.cmd"
{ "$wine" cmd /c 'C:\try.cmd' 2>&1 || true; } | tr -d '\r' | sed 's/ -XX.*slugpeak\.home=/ ... /; s/ *$//' >"$work/said"
cat >"$work/expected" <<'END'
"C:\Program Files\Some Maker\jre-21\bin\java.exe" ... C:\radio tools\." -jar "C:\radio tools\lib\slugpeak-cli.jar" common "a b.jsonl"
"C:\j\jdk17\bin\java.exe" ... C:\radio tools\." -jar "C:\radio tools\lib\slugpeak-cli.jar" home "C:\my logs\x.csv"
"C:\j\jdk17\bin\java.exe" ... C:\radio tools\." -jar "C:\radio tools\lib\slugpeak-cli.jar" path
slugpeak: no Java 17 or newer found (only 11, at C:\j\jdk 11 (x86)\bin\java.exe); install a Java runtime, version 17 or newer, or set JAVA_HOME to one
slugpeak: no Java 17 or newer found (only 8, at C:\j\jdk8\bin\java.exe); install a Java runtime, version 17 or newer, or set JAVA_HOME to one
slugpeak: no Java 17 or newer found; install a Java runtime, version 17 or newer, or set JAVA_HOME to one
ended with 1
END
diff "$work/expected" "$work/said" || { echo "windows launcher: not what was expected" >&2; exit 1; }
echo "windows launcher: the right Java of five, arguments with blanks, and what is said without one"
