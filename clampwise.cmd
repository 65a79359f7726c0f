@echo off
rem Starts clampwise; builds it first when there is no build yet or its sources are newer.
rem CLAMPWISE_JAVA_OPTS holds further options for Java.
setlocal
set "HOME_DIR=%~dp0"
set "BUILD=%HOME_DIR%target"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"

set "WHY=first run"
if not exist "%BUILD%\clampwise.jar" goto build
if not exist "%HOME_DIR%src" goto run
pushd "%HOME_DIR%"
powershell -NoProfile -Command "$jar = (Get-Item target\clampwise.jar).LastWriteTime; if (Get-ChildItem src\main, rules, shared, pom.xml -Recurse -File | Where-Object { $_.LastWriteTime -gt $jar } | Select-Object -First 1) { exit 1 }"
set "NEWER=%ERRORLEVEL%"
popd
if not "%NEWER%"=="1" goto run
set "WHY=the sources have changed"

:build
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo clampwise: Java 17 or later is needed; set JAVA_HOME or put java on the PATH 1>&2
  exit /b 2
)
where mvn >nul 2>&1
if errorlevel 1 (
  echo clampwise: Maven is needed for the build; put mvn on the PATH 1>&2
  exit /b 2
)
echo clampwise: %WHY%, building; this takes a minute or two 1>&2
if not exist "%BUILD%" mkdir "%BUILD%"
pushd "%HOME_DIR%"
call mvn -q -B -Pquick -Dmaven.test.skip=true package >"%BUILD%\launcher.log" 2>&1
if errorlevel 1 (
  popd
  type "%BUILD%\launcher.log" 1>&2
  echo clampwise: the build failed; see above 1>&2
  exit /b 2
)
popd

:run
"%JAVA%" -Xshare:auto "-XX:SharedArchiveFile=%BUILD%\clampwise.jsa" -Xlog:disable ^
  -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:-UsePerfData %CLAMPWISE_JAVA_OPTS% ^
  -cp "%BUILD%\clampwise.jar" clampwise.cli.Main %*
exit /b %ERRORLEVEL%
