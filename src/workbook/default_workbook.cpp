#include "gritwright/workbook/default_workbook.hpp"

#include <pwd.h>
#include <unistd.h>

#include <cstdlib>

namespace gritwright {

namespace {

std::filesystem::path home_folder() {
  if (const char* home = std::getenv("HOME"); home != nullptr && *home == '/') return home;
  const passwd* user = ::getpwuid(::getuid());
  return user != nullptr && user->pw_dir != nullptr ? user->pw_dir : "/";
}

}  // namespace

std::filesystem::path default_workbook_file() {
  // A relative path there is to be ignored. Source: the XDG base directory specification.
  const char* data = std::getenv("XDG_DATA_HOME");
  const std::filesystem::path folder = data != nullptr && *data == '/' ? std::filesystem::path(data) : home_folder() / ".local/share";
  return folder / "gritwright" / "record.gritwright";
}

}  // namespace gritwright
