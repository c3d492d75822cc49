@echo off
rem Builds Ridewright where that is needed, then runs it.
setlocal
set "HOME_DIR=%~dp0"
set "JAR=%HOME_DIR%sim-cli\target\ridewright.jar"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo Ridewright needs a Java development kit ^(JDK^), version 17 or later, and finds no 'java'. 1>&2
  exit /b 69
)
if exist "%JAR%" goto run
where mvn >nul 2>&1
if errorlevel 1 (
  echo Ridewright has to be built first, with Apache Maven, and finds no 'mvn'. 1>&2
  exit /b 69
)
echo Building Ridewright; this happens once. After a change of its sources delete sim-cli\target. 1>&2
pushd "%HOME_DIR%"
call mvn -q -B -Dmaven.test.skip=true -Dcompiler.strict=-nowarn package
if errorlevel 1 (
  popd
  echo The build failed; the lines above say why. It needs a JDK of version 17 or later. 1>&2
  exit /b 69
)
popd
:run
rem quick to start rather than quick in the long run, but for studies, which run long
set "LEVEL=1"
if /i "%~1"=="study" set "LEVEL=4"
"%JAVA%" -XX:TieredStopAtLevel=%LEVEL% -XX:+UseSerialGC -Djava.awt.headless=true -Dfile.encoding=UTF-8 -cp "%JAR%;%HOME_DIR%sim-cli\target\lib\*" org.ridewright.cli.Main %*
exit /b %ERRORLEVEL%
