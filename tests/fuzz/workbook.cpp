// A workbook file with spoiled bytes: refused, or read as far as it goes; never a crash, and never changed.
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>

#include "gritwright/workbook/open_workbook.hpp"
#include "gritwright/workbook/search.hpp"
#include "gritwright/workbook/workbook_check.hpp"
#include "target.hpp"

using namespace gritwright;
namespace fs = std::filesystem;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const fs::path file = fs::temp_directory_path() / ("gritwright-fuzz-" + std::to_string(::getpid()) + ".gritwright");
  std::ofstream(file, std::ios::binary | std::ios::trunc) << fuzz::text_of(data, size);
  {
    OpeningOptions options;
    options.clock = [] { return std::chrono::system_clock::time_point(); };
    options.access = Access::read_only;
    options.daily_backup = false;
    options.placement = Placement::local;
    const auto workbook = OpenWorkbook::open(file, std::move(options));
    fuzz::must(workbook.ok() || !workbook.problems().empty());
    if (workbook) {
      try {
        for (const RecordKind kind : record_kinds) (void)workbook->list(kind);
        (void)check_content(*workbook);
        SearchQuery query;
        query.words = "pine";
        (void)search(*workbook, query);
        for (const RecordKind kind : record_kinds) (void)workbook->all_of(kind);
      } catch (const WorkbookTrouble&) {
        // Told to whoever asked; that is all a damaged file may do.
      }
    }
  }
  fuzz::must(fs::file_size(file) == size);
  for (const char* ending : {"", "-wal", "-shm", "-journal"}) fs::remove(file.string() + ending);
  return 0;
}
