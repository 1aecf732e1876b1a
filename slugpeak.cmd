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
echo slugpeak: first start, building; two to five minutes ^(Maven fetches what it needs once^) 1>&2
pushd "%here%"
call mvn -B -q -DskipTests package 1>&2
if errorlevel 1 (
  popd
  echo slugpeak: the build failed; the lines above say why 1>&2
  exit /b 1
)
popd

:run
set "java="
set "older="
if defined JAVA_HOME call :try "%JAVA_HOME%\bin\java.exe"
for %%p in (java.exe) do call :try "%%~$PATH:p"
if not defined java call :within "%ProgramFiles%"
if not defined java call :within "%LOCALAPPDATA%\Programs"
if defined java goto start
echo slugpeak: no Java 17 or newer found%older%; install a Java runtime, version 17 or newer, or set JAVA_HOME to one 1>&2
exit /b 1

:start
"%java%" -XX:SharedArchiveFile="%home%slugpeak.jsa" -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms16m -Xmx96m -Xss512k "-Dslugpeak.home=%home%." -jar "%home%lib\slugpeak-cli.jar" %*
exit /b %errorlevel%

rem Where installers put it: in a folder of the maker, in one of the version.
:within
for /f "delims=" %%m in ('dir /b /ad "%~1" 2^>nul') do for /f "delims=" %%v in ('dir /b /ad "%~1\%%m" 2^>nul') do call :try "%~1\%%m\%%v\bin\java.exe"
exit /b 0

rem Takes a Java if it is there and new enough: by the file beside its folder, or else by what it says of itself.
:try
if defined java exit /b 0
if "%~1"=="" exit /b 0
if not exist "%~1" exit /b 0
set "version="
if exist "%~dp1..\release" for /f "usebackq tokens=1,2 delims==" %%k in ("%~dp1..\release") do if "%%k"=="JAVA_VERSION" set "version=%%~l"
if not defined version for /f "tokens=3" %%v in ('^""%~1" -version 2^>^&1^"') do if not defined version set "version=%%~v"
if not defined version exit /b 0
if "%version:~0,2%"=="1." set "version=%version:~2%"
for /f "delims=.-+_" %%v in ("%version%") do set "version=%%v"
if %version% geq 17 (set "java=%~1") else set "older= (only %version%, at %~1)"
exit /b 0
