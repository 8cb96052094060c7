# Brings the catalogues up to the sources: cmake -DLUPDATE=... -DSOURCE_DIR=... -P update.cmake
file(GLOB catalogues ${SOURCE_DIR}/src/desktop/translations/gritwright_*.ts)

# lupdate knows no context for the bare literals of the report's templates and files them under the namespace it saw last. The
# program looks them up under "report", so the name is put back for the run and set right after it.
function(rename_context from to)
  foreach(catalogue ${catalogues})
    file(READ ${catalogue} text)
    string(REPLACE "<name>${from}</name>" "<name>${to}</name>" text "${text}")
    file(WRITE ${catalogue} "${text}")
  endforeach()
endfunction()

rename_context(report std)
foreach(catalogue ${catalogues})
  set(only)
  if(catalogue MATCHES "gritwright_en.ts$")
    set(only -pluralonly)  # the sources are English; only "1 row" and "2 rows" need a catalogue
  endif()
  execute_process(COMMAND ${LUPDATE} -silent -locations none -no-obsolete ${only} -tr-function-alias QT_TR_NOOP+=GRITWRIGHT_TEXT
                          ${SOURCE_DIR}/src/report ${SOURCE_DIR}/src/desktop -ts ${catalogue}
                  COMMAND_ERROR_IS_FATAL ANY)
endforeach()
rename_context(std report)
