#include "file_recognition.hpp"

#include <sqlite3.h>
#include <sys/stat.h>
#include <sys/vfs.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <map>
#include <mutex>
#include <string>
#include <string_view>

#include "schema.hpp"

namespace gritwright {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t header_size = 100;
using Header = std::array<unsigned char, header_size>;

std::uint32_t word_at(const Header& header, std::size_t offset) {
  std::uint32_t value = 0;
  for (std::size_t i = 0; i < 4; ++i) value = value << 8U | header[offset + i];
  return value;
}

/// The bytes of the header that are the same in every workbook. Offsets: https://www.sqlite.org/fileformat.html
bool header_is_whole(const Header& header) {
  const std::uint32_t page_size = static_cast<std::uint32_t>(header[16]) << 8U | header[17];
  const bool journal_known = (header[18] == 1 || header[18] == 2) && header[19] == header[18];
  const bool fixed_known = header[20] == 0 && header[21] == 64 && header[22] == 32 && header[23] == 32;
  const bool unused_empty = std::all_of(header.begin() + 72, header.begin() + 92, [](unsigned char byte) { return byte == 0; });
  constexpr std::uint32_t utf8 = 1;
  constexpr std::uint32_t newest_format = 4;
  return page_size == 4096 && journal_known && fixed_known && unused_empty && word_at(header, 44) == newest_format &&
         word_at(header, 52) == 0 && word_at(header, 56) == utf8 && word_at(header, 64) == 0;
}

struct FirstBytes {
  Header header{};
  std::int64_t size = 0;
};

/// The header as it lies on the disk. Read through SQLite's own handle, since closing any other one of this program would drop the
/// locks of its open workbooks.
std::optional<FirstBytes> first_bytes(const fs::path& file) {
  sqlite3* handle = nullptr;
  const int opened = sqlite3_open_v2(file.c_str(), &handle, SQLITE_OPEN_READONLY, nullptr);
  const std::unique_ptr<sqlite3, int (*)(sqlite3*)> closing(handle, sqlite3_close);
  sqlite3_file* bytes = nullptr;
  if (opened != SQLITE_OK || sqlite3_file_control(handle, "main", SQLITE_FCNTL_FILE_POINTER, &bytes) != SQLITE_OK) return std::nullopt;
  FirstBytes first;
  sqlite3_int64 size = 0;
  if (bytes->pMethods->xFileSize(bytes, &size) != SQLITE_OK) return std::nullopt;
  first.size = size;
  // A short read fills up with zeros.
  const int read = bytes->pMethods->xRead(bytes, first.header.data(), static_cast<int>(header_size), 0);
  if (read != SQLITE_OK && read != SQLITE_IOERR_SHORT_READ) return std::nullopt;
  return first;
}

/// True if pages are missing at the end. While changes wait in a log or journal beside it, the file's length says nothing.
bool is_cut_off(const fs::path& file, const FirstBytes& first) {
  for (const char* ending : {"-wal", "-journal"}) {
    std::error_code trouble;
    if (fs::file_size(file.string() + ending, trouble) > 0 && !trouble) return false;
  }
  const bool count_holds = word_at(first.header, 24) == word_at(first.header, 92);
  constexpr std::int64_t page_bytes = 4096;
  return count_holds && first.size < page_bytes * word_at(first.header, 28);
}

struct OpenFiles {
  std::mutex guard;
  std::map<FileIdentity, int> count;
};
OpenFiles& open_files() {
  static OpenFiles files;
  return files;
}

std::string lower(std::string text) {
  for (char& sign : text) sign = static_cast<char>(std::tolower(static_cast<unsigned char>(sign)));
  return text;
}

bool is_network(const fs::path& folder) {
  struct statfs info {};
  if (::statfs(folder.c_str(), &info) != 0) return false;
  // Magic numbers of linux/magic.h and of the network file systems that are not in it.
  constexpr std::array<std::uint32_t, 12> network{0x6969,     0x517B,     0xFF534D42, 0xFE534D42, 0x65735546, 0x01021997,
                                                  0x5346414F, 0x6B414653, 0x00C36400, 0x564C,     0x73757245, 0x7461636F};
  return std::ranges::find(network, static_cast<std::uint32_t>(info.f_type)) != network.end();
}

/// A mark of a synchronising program: a hidden entry that says so, or one with the folder's own name.
bool has_sync_mark(const fs::path& folder) {
  const std::string own = lower(folder.filename().string());
  std::error_code trouble;
  for (fs::directory_iterator entry(folder, fs::directory_options::skip_permission_denied, trouble), end;
       !trouble && entry != end; entry.increment(trouble)) {
    const std::string name = lower(entry->path().filename().string());
    if (!name.starts_with('.')) continue;
    if (name.starts_with(".sync") || name.starts_with("._sync") || name == ".stfolder") return true;
    if (!own.empty() && (name == "." + own || name == "." + own + ".cache")) return true;
  }
  return false;
}

bool is_synced(fs::path folder) {
  for (; !folder.empty() && folder != folder.root_path(); folder = folder.parent_path()) {
    const std::string name = lower(folder.filename().string());
    if (name.ends_with("cloud") || name.ends_with("drive") || name == "sync" || name.starts_with("synced")) return true;
    if (has_sync_mark(folder)) return true;
  }
  return false;
}

Problem problem(const char* code, const fs::path& file) {
  Place place;
  place.file = file.string();
  return {code, std::move(place), {}};
}

}  // namespace

std::optional<FileIdentity> identity_of(const fs::path& file) {
  struct stat info {};
  if (::stat(file.c_str(), &info) != 0) return std::nullopt;
  return FileIdentity{static_cast<std::uint64_t>(info.st_dev), static_cast<std::uint64_t>(info.st_ino)};
}

std::shared_ptr<void> mark_as_open(const FileIdentity& identity) {
  OpenFiles& files = open_files();
  const std::lock_guard lock(files.guard);
  ++files.count[identity];
  return {nullptr, [identity, &files](void*) {
            const std::lock_guard releasing(files.guard);
            if (--files.count[identity] == 0) files.count.erase(identity);
          }};
}

bool is_open_here(const FileIdentity& identity) {
  OpenFiles& files = open_files();
  const std::lock_guard lock(files.guard);
  return files.count.contains(identity);
}

Problems recognise(const fs::path& file) {
  std::error_code trouble;
  const fs::file_status status = fs::status(file, trouble);
  if (status.type() == fs::file_type::not_found) return {problem("file.missing", file)};
  if (trouble) return {problem("file.unreadable", file)};
  if (fs::is_directory(status)) return {problem("file.is-folder", file)};
  if (!fs::is_regular_file(status)) return {problem("file.other-kind", file)};
  const std::optional<FirstBytes> first = first_bytes(file);
  if (!first) return {problem("file.unreadable", file)};
  const Header& header = first->header;
  const auto read = static_cast<std::size_t>(std::min<std::int64_t>(first->size, header_size));
  constexpr std::string_view magic("SQLite format 3\0", 16);
  const std::string_view start(reinterpret_cast<const char*>(header.data()), magic.size());
  const bool says_sqlite = start == magic;
  const bool says_workbook = word_at(header, 68) == static_cast<std::uint32_t>(workbook_application_id);
  // Cut off or empty: what is left can't tell what it was, so its name must.
  if (read < header_size) return {problem(read == 0 || magic.starts_with(start.substr(0, read)) ? "file.damaged" : "file.other-kind", file)};
  if (!says_sqlite && !says_workbook) return {problem("file.other-kind", file)};
  if (!says_sqlite || !header_is_whole(header))
    return {problem(says_workbook || file.extension() == ".gritwright" ? "file.damaged" : "file.other-kind", file)};
  if (!says_workbook) return {problem(file.extension() == ".gritwright" ? "file.damaged" : "file.other-kind", file)};
  if (is_cut_off(file, *first)) return {problem("file.damaged", file)};
  return {};
}

Placement placement_of(const fs::path& file) {
  std::error_code trouble;
  fs::path folder = fs::absolute(file, trouble).parent_path();
  if (const fs::path real = fs::canonical(folder, trouble); !trouble) folder = real;
  if (is_network(folder)) return Placement::network_folder;
  return is_synced(folder) ? Placement::synced_folder : Placement::local;
}

}  // namespace gritwright
