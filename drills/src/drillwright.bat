@echo off
rem Starts Drillwright with the Java that is on this computer; says so if there is none, or only an old one.
rem A double click brings it up in a window that asks what to do.
setlocal
set "NEEDED=17"
set "JAR=%~dp0drillwright.jar"

if not exist "%JAR%" (
    echo drillwright.jar is missing. It must lie in the same folder as this file. 1>&2
    goto failed
)

set "JAVA=java.exe"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"

rem The first line that names a version, such as: openjdk version "17.0.15" 2025-04-15
set "CHECK=%TEMP%\drillwright-java-%RANDOM%.txt"
"%JAVA%" -version 2> "%CHECK%" 1> nul
if errorlevel 1 (
    del "%CHECK%" 2> nul
    echo Java was not found on this computer. Drillwright needs Java %NEEDED% or newer; START.txt says where to get it. 1>&2
    goto failed
)
set "VERSION="
for /f "usebackq tokens=3" %%v in (`findstr /c:" version " "%CHECK%"`) do if not defined VERSION set "VERSION=%%~v"
del "%CHECK%" 2> nul
set "MAJOR=0"
for /f "tokens=1 delims=.-+" %%m in ("%VERSION%") do set "MAJOR=%%m"
if %MAJOR% LSS %NEEDED% (
    echo The Java on this computer is too old. Drillwright needs Java %NEEDED% or newer; see START.txt. 1>&2
    goto failed
)

"%JAVA%" -jar "%JAR%" %*
set "CODE=%ERRORLEVEL%"
if "%~1"=="" if not "%CODE%"=="0" pause
exit /b %CODE%

:failed
rem In a window of its own nobody could read the sentence before it is gone.
if "%~1"=="" pause
exit /b 2
