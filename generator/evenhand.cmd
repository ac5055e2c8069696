@echo off
rem Starts Evenhand; in a clone, builds it first when its jar is missing or older than its sources.
rem
rem   generator\evenhand COMMAND ...
rem
rem EVENHAND_JAVA_OPTS  options for the Java virtual machine, separated by spaces
rem JAVA_HOME           the Java to use; without it, the one on the PATH
rem
rem Standard output belongs to the program: whatever this file or the build has to say goes to standard error.

setlocal DisableDelayedExpansion
for %%I in ("%~dp0..") do set "EVENHAND_HOME=%%~fI"
set "EVENHAND_JAR=%EVENHAND_HOME%\generator\target\evenhand.jar"
set "EVENHAND_LOCK=%EVENHAND_HOME%\generator\target\evenhand.lock"

rem ---- Java ----

if defined JAVA_HOME (set "EVENHAND_JAVA=%JAVA_HOME%\bin\java.exe") else (set "EVENHAND_JAVA=java")
"%EVENHAND_JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo evenhand: Java is missing: install a JDK, version 17 or newer, or set JAVA_HOME 1>&2
  exit /b 2
)
rem The first field of the version: 17 of "17.0.15", 25 of "25", 1 of "1.8.0".
set "EVENHAND_MAJOR=0"
for /f tokens^=2^ delims^=^" %%V in ('call "%%EVENHAND_JAVA%%" -version 2^>^&1 ^| findstr /c:" version "') do (
  for /f "delims=.-+" %%M in ("%%V") do set "EVENHAND_MAJOR=%%M"
)
if %EVENHAND_MAJOR% LSS 17 (
  echo evenhand: Java 17 or newer is needed; set JAVA_HOME to a newer one 1>&2
  exit /b 2
)

rem ---- The jar ----

rem Unpacked from a release there are no sources, and the jar stands in a folder of its own.
if exist "%EVENHAND_HOME%\pom.xml" goto clone
if not exist "%EVENHAND_HOME%\lib\evenhand.jar" goto clone
set "EVENHAND_JAR=%EVENHAND_HOME%\lib\evenhand.jar"
goto run

:clone
call :is_current
if errorlevel 1 goto build
if exist "%EVENHAND_LOCK%\" goto build
goto run

:build
call mvn -v >nul 2>&1
if errorlevel 1 (
  echo evenhand: Maven is missing: install Maven 3.8 or newer, it builds the program 1>&2
  exit /b 2
)
if not exist "%EVENHAND_HOME%\generator\target\" md "%EVENHAND_HOME%\generator\target"
set /a EVENHAND_WAITED=0
:take_lock
md "%EVENHAND_LOCK%" 2>nul && goto locked
if %EVENHAND_WAITED% EQU 0 echo evenhand: waiting for another build to end 1>&2
if %EVENHAND_WAITED% GEQ 600 (
  echo evenhand: another build has not ended in ten minutes; if there is none, remove "%EVENHAND_LOCK%" 1>&2
  exit /b 2
)
rem There is no "sleep" here; two echoes to oneself are one second apart.
ping -n 2 127.0.0.1 >nul
set /a EVENHAND_WAITED+=1
goto take_lock

:locked
call :is_current
if not errorlevel 1 goto unlock
echo evenhand: building the program from its sources ... 1>&2
pushd "%EVENHAND_HOME%"
call mvn -B -ntp -q -DskipTests -Dspotless.check.skip=true package 1>&2 <nul
set "EVENHAND_STATUS=%ERRORLEVEL%"
popd
if not "%EVENHAND_STATUS%"=="0" (
  rd "%EVENHAND_LOCK%"
  echo evenhand: the build failed; what Maven says is above 1>&2
  exit /b 2
)
echo evenhand: built 1>&2
:unlock
rd "%EVENHAND_LOCK%"

:run
set "EVENHAND_SHORT="
if "%~1"=="" set "EVENHAND_SHORT=yes"
if "%~1"=="explain" set "EVENHAND_SHORT=yes"
if "%~1"=="completion" set "EVENHAND_SHORT=yes"
if "%~1"=="--help" set "EVENHAND_SHORT=yes"
if "%~1"=="--version" set "EVENHAND_SHORT=yes"
rem Commands that end in a moment do better without the optimising compiler.
set "EVENHAND_FLAGS="
if defined EVENHAND_SHORT set "EVENHAND_FLAGS=-Djava.awt.headless=true -XX:TieredStopAtLevel=1"
"%EVENHAND_JAVA%" %EVENHAND_FLAGS% %EVENHAND_JAVA_OPTS% -jar "%EVENHAND_JAR%" %*
exit /b %ERRORLEVEL%

rem Status 0 if the jar is there and no source is newer.
:is_current
if not exist "%EVENHAND_JAR%" exit /b 1
powershell -NoProfile -NonInteractive -Command ^
  "$built = (Get-Item -LiteralPath $env:EVENHAND_JAR).LastWriteTimeUtc;" ^
  "$sources = 'pom.xml', 'generator\pom.xml', 'generator\src\main', 'templates', 'sample-results' |" ^
  " ForEach-Object { Join-Path $env:EVENHAND_HOME $_ } | Where-Object { Test-Path -LiteralPath $_ };" ^
  "$newer = Get-Item -LiteralPath $sources | ForEach-Object { $_; if ($_.PSIsContainer) { Get-ChildItem -LiteralPath $_.FullName -Recurse } } |" ^
  " Where-Object { $_.LastWriteTimeUtc -gt $built } | Select-Object -First 1;" ^
  "if ($newer) { exit 1 } else { exit 0 }" <nul
exit /b %ERRORLEVEL%
