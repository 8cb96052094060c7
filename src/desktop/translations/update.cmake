# Brings the catalogues up to the sources: cmake -DLUPDATE=... -DSOURCE_DIR=... -P update.cmake
file(GLOB catalogues ${SOURCE_DIR}/src/desktop/translations/gritwright_*.ts)

# lupdate gives the bare literals of the report no context of their own; the program looks them up under "report". So it reads a
# copy that says so.
set(copy ${SOURCE_DIR}/build/translated_report)
file(REMOVE_RECURSE ${copy})
file(GLOB sources ${SOURCE_DIR}/src/report/*.cpp)
foreach(source ${sources})
  file(READ ${source} text)
  string(REPLACE "GRITWRIGHT_TEXT(" "QT_TRANSLATE_NOOP(\"report\", " text "${text}")
  get_filename_component(name ${source} NAME)
  file(WRITE ${copy}/${name} "${text}")
endforeach()

# A material is shown by the name and the description in its file.
set(texts)
file(GLOB materials ${SOURCE_DIR}/materials/*.json)
foreach(material ${materials})
  file(READ ${material} json)
  string(JSON format ERROR_VARIABLE none GET "${json}" format)
  if(format STREQUAL "gritwright/material/1")
    foreach(key name description)
      string(JSON text GET "${json}" ${key})
      string(REPLACE "\"" "\\\"" text "${text}")
      string(APPEND texts "QT_TRANSLATE_NOOP(\"materials\", \"${text}\");\n")
    endforeach()
  endif()
endforeach()
file(WRITE ${copy}/materials.cpp "${texts}")

foreach(catalogue ${catalogues})
  set(only)
  if(catalogue MATCHES "gritwright_en.ts$")
    set(only -pluralonly)  # the sources are English; only "1 row" and "2 rows" need a catalogue
  endif()
  execute_process(COMMAND ${LUPDATE} -silent -locations none -no-obsolete ${only} ${copy} ${SOURCE_DIR}/src/desktop -ts ${catalogue}
                  COMMAND_ERROR_IS_FATAL ANY)
endforeach()
file(REMOVE_RECURSE ${copy})
