@echo off
rem SPDX-License-Identifier: EPL-2.0
rem
rem twinfeed VERB ...      runs a verb without a window
rem twinfeed [desktop]     opens the window, or brings the one that is there to the front
rem twinfeed FILE.job ...  opens jobs in it
rem
rem Exit status: the program's own (0 to 3); 3 also for whatever keeps it from starting.
rem JAVA_HOME, or else java on the PATH, is a Java of version 17 or newer; a "jre" folder beside this file goes before both.
rem TWINFEED_JAVA_OPTIONS holds further options for the Java machine, for example -Dtwinfeed.debug=true or -Xmx4g.
setlocal EnableExtensions DisableDelayedExpansion
set "HERE=%~dp0"
set "BIN="
if exist "%HERE%jre\bin\java.exe" set "BIN=%HERE%jre\bin\"
if not defined BIN if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "BIN=%JAVA_HOME%\bin\"
if not defined BIN for %%J in (java.exe) do if not "%%~$PATH:J"=="" set "BIN=%%~dp$PATH:J"
if not defined BIN (
  echo twinfeed: no Java found: set JAVA_HOME to a Java of version 17 or newer, or put java on the PATH 1>&2
  exit /b 3
)

rem What makes later starts quicker belongs to one build and one person; without it the program works, a little slower.
set "BUILD="
set /p BUILD=<"%HERE%configuration\build"
set "STATE=%LOCALAPPDATA%\Twinfeed\state\%BUILD%"
set "QUIET=-Xshare:auto -Xlog:disable -XX:+DisplayVMOutputToStderr -XX:-UsePerfData -Djava.awt.headless=true"
rem The window runs all day beside other programs: a heap that begins small and shrinks again.
set "SHRINKING=-XX:+UseSerialGC -XX:MinHeapFreeRatio=20 -XX:MaxHeapFreeRatio=40 %QUIET%"
set "LASTING=-Xms32m %SHRINKING%"
rem Short runs: a quick compiler that begins sooner than usual and with smaller pieces, and little room for what is new.
set "SOONER=-XX:+IgnoreUnrecognizedVMOptions -XX:Tier3InvocationThreshold=80 -XX:Tier3MinInvocationThreshold=40 -XX:Tier3CompileThreshold=800 -XX:Tier3BackEdgeThreshold=10000"
set "QUICK=-XX:TieredStopAtLevel=1 %SOONER% -XX:C1MaxInlineSize=20 -XX:+UseSerialGC -Xmn48m %QUIET%"
if not exist "%STATE%\ready" "%BIN%java.exe" %QUICK% "-Dtwinfeed.state=%STATE%" -cp "%HERE%twinfeed.jar" twinfeed.launcher.WarmUp <nul >nul 2>nul

if "%~1"=="" goto desktop
if "%~1"=="desktop" goto desktop
if /i "%~x1"==".job" goto desktop

set "CLASSES="
if exist "%STATE%\headless.jsa" set CLASSES="-XX:SharedArchiveFile=%STATE%\headless.jsa"
if "%~1"=="batch" set "QUICK=-Xms128m -Xmn64m %SHRINKING%"
"%BIN%java.exe" %QUICK% %CLASSES% -Dtwinfeed.exit.base=64 "-Dtwinfeed.state=%STATE%" %TWINFEED_JAVA_OPTIONS% -jar "%HERE%twinfeed.jar" %*
set "STATUS=%ERRORLEVEL%"
rem A status of the program's own comes with 64 added, which tells it from those by which a Java machine gives up.
if "%STATUS%"=="64" exit /b 0
if "%STATUS%"=="65" exit /b 1
if "%STATUS%"=="66" exit /b 2
if "%STATUS%"=="68" exit /b 4
exit /b 3

:desktop
start "" "%BIN%javaw.exe" %LASTING% "-Dtwinfeed.state=%STATE%" %TWINFEED_JAVA_OPTIONS% -jar "%HERE%twinfeed.jar" %*
exit /b 0
