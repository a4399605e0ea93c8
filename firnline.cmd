@echo off
rem Starts Firnline on Windows, with the same words as the launcher for other systems beside it.
rem FIRNLINE_JAVA_OPTS holds further options for the Java machine, e.g. -Xmx1g
setlocal EnableExtensions DisableDelayedExpansion
set "ROOT=%~dp0"
set "READY=%ROOT%app\target\ready"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"

"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo Java was not found. Install a JDK, version 17 or newer, or set JAVA_HOME to one that is installed. 1>&2
  exit /b 69
)
if /i "%~1"=="test" goto test
if /i "%~1"=="bench" goto bench

call :is_ready
if errorlevel 1 call :build
if errorlevel 1 exit /b 69
set "FLAGS=-XX:+UseSerialGC -XX:TieredStopAtLevel=1"
for %%W in (demo serve watch) do if /i "%~1"=="%%W" set "FLAGS=-XX:+UseSerialGC"
"%JAVA%" %FLAGS% %FIRNLINE_JAVA_OPTS% -jar "%READY%\firnline-run.jar" %*
exit /b %ERRORLEVEL%

:test
call :need_maven
if errorlevel 1 exit /b 69
where /q chromedriver
if errorlevel 1 echo The browser tests need Chromium and its driver on the PATH as 'chromium' and 'chromedriver'. 1>&2
pushd "%ROOT%"
call mvn -B verify
set "RESULT=%ERRORLEVEL%"
popd
exit /b %RESULT%

:bench
call :need_maven
if errorlevel 1 exit /b 69
for /f %%D in ('powershell -NoProfile -Command "Get-Date -Format yyyy-MM-dd"') do set "TODAY=%%D"
pushd "%ROOT%"
call mvn -B -q -Pquick -pl bench -am package
if not errorlevel 1 "%JAVA%" -jar bench\target\firnline-bench.jar --date %TODAY%
set "RESULT=%ERRORLEVEL%"
popd
exit /b %RESULT%

:need_maven
where /q mvn
if errorlevel 1 (
  echo Maven was not found. Install it, version 3.8 or newer, and put it on the PATH. 1>&2
  exit /b 69
)
exit /b 0

rem Succeeds when the unpacked program is newer than every source it was made from.
:is_ready
if not exist "%READY%\built" exit /b 1
set "FIRNLINE_ROOT=%ROOT%"
powershell -NoProfile -Command "$r = $env:FIRNLINE_ROOT; $built = (Get-Item ($r + 'app\target\ready\built')).LastWriteTimeUtc; $sources = 'pom.xml', '.mvn', 'science\pom.xml', 'science\src\main', 'app\pom.xml', 'app\src\main' | ForEach-Object { Get-Item ($r + $_) -Force; Get-ChildItem ($r + $_) -Recurse -Force }; if ($sources | Where-Object { $_.LastWriteTimeUtc -gt $built } | Select-Object -First 1) { exit 1 }"
exit /b %ERRORLEVEL%

:build
call :need_maven
if errorlevel 1 exit /b 69
echo Building Firnline (first start takes a few minutes)... 1>&2
if exist "%READY%" rmdir /s /q "%READY%"
set "MARK=%TEMP%\firnline-built-%RANDOM%"
type nul >"%MARK%"
pushd "%ROOT%"
call mvn -B -q -Pquick -pl app -am package 1>&2
set "RESULT=%ERRORLEVEL%"
popd
if not "%RESULT%"=="0" (
  echo Firnline could not be built; the lines above say why. The first build needs the network, later ones do not. 1>&2
  exit /b 69
)
"%JAVA%" -Djarmode=tools -jar "%ROOT%app\target\firnline-run.jar" extract --force --destination "%READY%" >nul
if errorlevel 1 exit /b 69
move /y "%MARK%" "%READY%\built" >nul
exit /b 0
