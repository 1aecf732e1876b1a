@echo off
rem Starts slugpeak. In a source tree that has not been built yet it builds first, once.
setlocal
set "here=%~dp0"
set "home=%here%"
if not exist "%here%lib\" set "home=%here%cli\target\slugpeak\"
if exist "%home%lib\slugpeak-cli.jar" goto run
if not exist "%here%pom.xml" (
  echo slugpeak: its files are not beside this script; unpack the whole archive again 1>&2
  exit /b 1
)
echo slugpeak: first start, building; a minute or two 1>&2
pushd "%here%"
call mvn -B -q -DskipTests package 1>&2
if errorlevel 1 (
  popd
  echo slugpeak: the build failed; the lines above say why 1>&2
  exit /b 1
)
popd
:run
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -XX:SharedArchiveFile="%home%slugpeak.jsa" -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx96m "-Dslugpeak.home=%home%." -jar "%home%lib\slugpeak-cli.jar" %*
exit /b %errorlevel%
