#pragma once
// A file layer of SQLite that does what the system's does until it is told to fail: the shipped code runs on it unchanged.

#include <sqlite3.h>

#include <atomic>
#include <cstring>
#include <string>
#include <thread>
#include <vector>

namespace gritwright::tests {

class FailingFiles {
 public:
  static constexpr const char* name = "failing-files";

  /// One for the whole program, since SQLite keeps it.
  static FailingFiles& instance() {
    static FailingFiles files;
    return files;
  }

  /// Lets `writes` more writes and truncations through, then answers with `code` until `heal`.
  void fail_after(int writes, int code) {
    left_ = writes;
    code_ = code;
    failed_ = false;
  }
  void heal() { left_ = -1; }
  [[nodiscard]] bool has_failed() const { return failed_; }

  /// From now on it is noticed when another thread than this one writes.
  void watch_writers() {
    owner_ = std::this_thread::get_id();
    others_wrote_ = false;
  }
  [[nodiscard]] bool others_wrote() const { return others_wrote_; }
  /// How often the disk was waited for.
  [[nodiscard]] int syncs() const { return syncs_; }

 private:
  struct File {
    sqlite3_file base;
    sqlite3_file* real;
  };

  FailingFiles() : system_(sqlite3_vfs_find(nullptr)) {
    layer_ = *system_;
    layer_.pNext = nullptr;
    layer_.zName = name;
    layer_.szOsFile = static_cast<int>(sizeof(File)) + system_->szOsFile;
    layer_.xOpen = &open;
    sqlite3_vfs_register(&layer_, 0);
  }

  static sqlite3_file* real(sqlite3_file* file) { return reinterpret_cast<File*>(file)->real; }

  static int refusal() {
    FailingFiles& files = instance();
    if (std::this_thread::get_id() != files.owner_) files.others_wrote_ = true;
    if (files.left_ < 0) return SQLITE_OK;
    if (files.left_ > 0) {
      --files.left_;
      return SQLITE_OK;
    }
    files.failed_ = true;
    return files.code_;
  }

  static int open(sqlite3_vfs*, sqlite3_filename path, sqlite3_file* file, int flags, int* out_flags) {
    FailingFiles& files = instance();
    auto* own = reinterpret_cast<File*>(file);
    own->real = reinterpret_cast<sqlite3_file*>(own + 1);
    std::memset(own->real, 0, static_cast<std::size_t>(files.system_->szOsFile));
    const int code = files.system_->xOpen(files.system_, path, own->real, flags, out_flags);
    own->base.pMethods = own->real->pMethods == nullptr ? nullptr : methods();
    return code;
  }

  static const sqlite3_io_methods* methods() {
    static const sqlite3_io_methods table = [] {
      sqlite3_io_methods m{};
      m.iVersion = 2;
      m.xClose = [](sqlite3_file* f) { return real(f)->pMethods->xClose(real(f)); };
      m.xRead = [](sqlite3_file* f, void* to, int size, sqlite3_int64 at) { return real(f)->pMethods->xRead(real(f), to, size, at); };
      m.xWrite = [](sqlite3_file* f, const void* from, int size, sqlite3_int64 at) {
        const int refused = refusal();
        if (refused == SQLITE_OK) return real(f)->pMethods->xWrite(real(f), from, size, at);
        // A full disk takes the first half before it says so.
        (void)real(f)->pMethods->xWrite(real(f), from, size / 2, at);
        return refused;
      };
      m.xTruncate = [](sqlite3_file* f, sqlite3_int64 size) { return real(f)->pMethods->xTruncate(real(f), size); };
      m.xSync = [](sqlite3_file* f, int flags) {
        FailingFiles& files = instance();
        ++files.syncs_;
        const bool broken = files.left_ == 0 && files.code_ != SQLITE_FULL;
        if (!broken) return real(f)->pMethods->xSync(real(f), flags);
        files.failed_ = true;
        return SQLITE_IOERR_FSYNC;
      };
      m.xFileSize = [](sqlite3_file* f, sqlite3_int64* size) { return real(f)->pMethods->xFileSize(real(f), size); };
      m.xLock = [](sqlite3_file* f, int level) { return real(f)->pMethods->xLock(real(f), level); };
      m.xUnlock = [](sqlite3_file* f, int level) { return real(f)->pMethods->xUnlock(real(f), level); };
      m.xCheckReservedLock = [](sqlite3_file* f, int* held) { return real(f)->pMethods->xCheckReservedLock(real(f), held); };
      m.xFileControl = [](sqlite3_file* f, int operation, void* argument) { return real(f)->pMethods->xFileControl(real(f), operation, argument); };
      m.xSectorSize = [](sqlite3_file* f) { return real(f)->pMethods->xSectorSize(real(f)); };
      m.xDeviceCharacteristics = [](sqlite3_file* f) { return real(f)->pMethods->xDeviceCharacteristics(real(f)); };
      m.xShmMap = [](sqlite3_file* f, int region, int size, int extend, void volatile** memory) {
        return real(f)->pMethods->xShmMap(real(f), region, size, extend, memory);
      };
      m.xShmLock = [](sqlite3_file* f, int offset, int n, int flags) { return real(f)->pMethods->xShmLock(real(f), offset, n, flags); };
      m.xShmBarrier = [](sqlite3_file* f) { real(f)->pMethods->xShmBarrier(real(f)); };
      m.xShmUnmap = [](sqlite3_file* f, int remove) { return real(f)->pMethods->xShmUnmap(real(f), remove); };
      return m;
    }();
    return &table;
  }

  sqlite3_vfs* system_;
  sqlite3_vfs layer_{};
  int left_ = -1;
  int code_ = SQLITE_FULL;
  std::atomic<int> syncs_{0};
  bool failed_ = false;
  std::thread::id owner_ = std::this_thread::get_id();
  std::atomic<bool> others_wrote_{false};
};

}  // namespace gritwright::tests
