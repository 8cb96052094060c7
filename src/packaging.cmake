# What an installed Gritwright is, and the packages made of it: `cpack -G DEB` and `cpack -G TGZ` in a release build.
include(GNUInstallDirs)

install(TARGETS gritwright RUNTIME)
install(DIRECTORY materials demo-data DESTINATION ${CMAKE_INSTALL_DATADIR}/gritwright)
install(DIRECTORY docs/science docs/file-format DESTINATION ${CMAKE_INSTALL_DOCDIR})

# The day the changelog gives this version; part of the man pages and metadata, so that two builds are equal.
file(STRINGS docs/changelog.md heading REGEX "^## ${PROJECT_VERSION} " LIMIT_COUNT 1)
string(REGEX MATCH "[0-9]+-[0-9]+-[0-9]+" GRITWRIGHT_RELEASE_DATE "${heading}")
if(NOT GRITWRIGHT_RELEASE_DATE)
  message(FATAL_ERROR "docs/changelog.md has no dated section for version ${PROJECT_VERSION}")
endif()

function(gritwright_page file)
  get_filename_component(name ${file} NAME_WLE)
  configure_file(${file} ${PROJECT_BINARY_DIR}/package/${name} @ONLY)
  set(page ${PROJECT_BINARY_DIR}/package/${name})
  add_custom_command(OUTPUT ${page}.gz COMMAND gzip -9nc ${page} > ${page}.gz DEPENDS ${page} VERBATIM)
  add_custom_target(page_${name} ALL DEPENDS ${page}.gz)
  install(FILES ${page}.gz DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
endfunction()

gritwright_page(src/cli/linux/gritwright.1.in)
install(FILES src/cli/linux/gritwright.bash DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions RENAME gritwright)
set(changelog ${PROJECT_BINARY_DIR}/package/changelog.gz)
add_custom_command(OUTPUT ${changelog} COMMAND gzip -9nc ${PROJECT_SOURCE_DIR}/docs/changelog.md > ${changelog}
                   DEPENDS ${PROJECT_SOURCE_DIR}/docs/changelog.md VERBATIM)
add_custom_target(changelog ALL DEPENDS ${changelog})
install(FILES ${changelog} DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(FILES src/copyright DESTINATION ${CMAKE_INSTALL_DOCDIR})

if(GRITWRIGHT_DESKTOP)
  install(TARGETS gritwright-desktop RUNTIME)
  gritwright_page(src/desktop/linux/gritwright-desktop.1.in)
  configure_file(src/desktop/linux/gritwright-desktop.metainfo.xml.in
                 ${PROJECT_BINARY_DIR}/package/gritwright-desktop.metainfo.xml @ONLY)
  install(FILES ${PROJECT_BINARY_DIR}/package/gritwright-desktop.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
  install(FILES src/desktop/linux/gritwright-desktop.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
  install(FILES src/desktop/linux/gritwright.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
  install(FILES src/desktop/linux/gritwright-mime.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages RENAME gritwright.xml)
endif()

set(CPACK_PACKAGE_NAME gritwright)
set(CPACK_PACKAGE_VENDOR "The Gritwright maintainers")
set(CPACK_PACKAGE_CONTACT "The Gritwright maintainers <maintainers@gritwright.example>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "mixes, pots and record for trees in shallow containers")
set(CPACK_PACKAGE_DESCRIPTION
    "Grades sieved bags of aggregate, screens them into fractions, designs mixes by\nloose parts, estimates air and water in the container the mix goes into, plans\nrepottings and keeps the record that traces every bag to every tree.")
set(CPACK_RESOURCE_FILE_LICENSE ${PROJECT_SOURCE_DIR}/LICENSE)
set(CPACK_STRIP_FILES ON)
set(CPACK_GENERATOR "DEB;TGZ")
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Plug-ins are not linked, so the dependency on them is not seen.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6svg6")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "fonts-dejavu-core, fonts-vlgothic")
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
set(CPACK_DEBIAN_COMPRESSION_TYPE xz)
include(CPack)
