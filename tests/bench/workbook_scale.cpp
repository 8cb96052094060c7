// A workbook of many years: opening, searching, changing and tracing it, and what it takes of memory; beside it the same records in one
// JSON file that is held in memory and written whole, safely, at every change. Each is measured in a process of its own.
#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "gritwright/workbook/exchange.hpp"
#include "gritwright/workbook/open_workbook.hpp"
#include "gritwright/workbook/search.hpp"
#include "gritwright/workbook/trace.hpp"
#include "support/large_workbook.hpp"

using namespace gritwright;
using namespace gritwright::tests;

namespace {

namespace fs = std::filesystem;
using Watch = std::chrono::steady_clock;

double milliseconds_since(Watch::time_point start) { return std::chrono::duration<double, std::milli>(Watch::now() - start).count(); }

template <class Work>
double time_of(Work work) {
  const auto start = Watch::now();
  work();
  return milliseconds_since(start);
}

struct Times {
  double median;
  double worst;
};
Times sorted_times(std::vector<double> all) {
  std::ranges::sort(all);
  return {all[all.size() / 2], all.back()};
}

/// The most this process ever held, by the kernel's account.
double peak_megabytes() {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);)
    if (line.starts_with("VmHWM:")) return std::stod(line.substr(6)) / 1024;
  return 0;
}

/// Takes `file` out of the system's cache, as after a night.
void forget(const fs::path& file) {
  const int handle = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
  if (handle < 0) return;
  ::fsync(handle);
  ::posix_fadvise(handle, 0, 0, POSIX_FADV_DONTNEED);
  ::close(handle);
}

OpenWorkbook opened(const fs::path& file, bool daily_backup = false) {
  OpeningOptions options;
  options.clock = [] { return std::chrono::system_clock::now(); };
  options.daily_backup = daily_backup;
  auto workbook = OpenWorkbook::open(file, std::move(options));
  if (!workbook) {
    fmt::print(stderr, "{}: {}\n", file.string(), workbook.problems().front().code);
    std::exit(1);
  }
  return std::move(workbook).value();
}

/// What is typed into the search field, letter by letter.
std::vector<std::string> keystrokes() {
  std::vector<std::string> typed;
  for (const std::string phrase : {"pumice dusty", "B-101234", "roots frost shade", "tree 77", "lot 9123", "xylophone"})
    for (std::size_t length = 1; length <= phrase.size(); ++length) typed.push_back(phrase.substr(0, length));
  return typed;
}

void row(const char* what, const std::string& figure, const char* limit) { fmt::print("  {:<52} {:>24}   {}\n", what, figure, limit); }
std::string in_ms(const Times& times) { return fmt::format("{:.1f} ms, worst {:.1f}", times.median, times.worst); }

int build(const fs::path& folder, const LargeSize& size) {
  OpenWorkbook workbook = opened(folder / "large.gritwright");
  const double taken = time_of([&] {
    const auto filled = fill_large(workbook, size);
    if (!filled) {
      fmt::print(stderr, "{}\n", filled.problems().front().code);
      std::exit(1);
    }
  });
  row("taken in through the import", fmt::format("{:.1f} s", taken / 1000), "");
  const double written = time_of([&] {
    std::ofstream out(folder / "large.json", std::ios::binary);
    export_workbook(workbook, out);
  });
  row("exported as JSON", fmt::format("{:.1f} s", written / 1000), "");
  return 0;
}

int measure_workbook(const fs::path& folder) {
  const fs::path file = folder / "large.gritwright";
  row("size of the file", fmt::format("{:.0f} MB", static_cast<double>(fs::file_size(file)) / 1e6), "");
  forget(file);
  std::optional<OpenWorkbook> held;
  ListFilter first_page;
  first_page.limit = 200;
  const double open = time_of([&] {
    held.emplace(opened(file));
    if (held->list(RecordKind::bag, first_page).empty() || held->list(RecordKind::log_entry, first_page).empty()) std::exit(1);
  });
  OpenWorkbook& workbook = *held;
  row("open to first lists, file not in the cache", fmt::format("{:.1f} ms", open), "500 ms");
  row("  every bag listed with stock and tests", fmt::format("{:.1f} ms", time_of([&] { (void)workbook.list(RecordKind::bag); })), "");
  std::vector<double> times;
  std::string slowest;
  for (const std::string& typed : keystrokes()) {
    const double taken = time_of([&] { (void)search(workbook, {.words = typed}); });
    if (times.empty() || taken > *std::ranges::max_element(times)) slowest = typed;
    times.push_back(taken);
  }
  row("keystroke of a search over everything", in_ms(sorted_times(times)), "30 ms");
  row("  the slowest", slowest, "");
  times.clear();
  for (const std::string& typed : keystrokes())
    times.push_back(time_of([&] { (void)search(workbook, {.words = typed, .from_day = "2012-01-01", .to_day = "2012-12-31", .material = "pumice"}); }));
  row("  the same, narrowed to a year and a material", in_ms(sorted_times(times)), "30 ms");
  times.clear();
  for (const std::string& typed : keystrokes())
    times.push_back(time_of([&] { (void)search(workbook, {.words = typed, .tree = Id<Tree>{"TR-100500"}}); }));
  row("  the same, narrowed to a tree", in_ms(sorted_times(times)), "30 ms");
  times.clear();
  for (int i = 0; i < 200; ++i) {
    const auto bag = *workbook.find(Id<Bag>{"B-" + std::to_string(100'001 + i * 97)});
    Bag now = bag.record;
    now.note = fmt::format("typed {}", i);
    times.push_back(time_of([&] {
      if (!workbook.replace(bag, now, "note of bag")) std::exit(1);
    }));
  }
  row("one change, durable", in_ms(sorted_times(times)), "15 ms");
  times.clear();
  for (int i = 0; i < 20; ++i)
    times.push_back(time_of([&] {
      if (trace(workbook, first_bag(), TraceDirection::forward)->steps.size() < 100) std::exit(1);
    }));
  row("trace of a bag to all trees", in_ms(sorted_times(times)), "50 ms");
  row("  its recall list", fmt::format("{:.1f} ms", time_of([&] { (void)recall_list(workbook, first_bag()); })), "");
  row("  what the sick trees share", fmt::format("{:.1f} ms", time_of([&] { (void)shared_traits(workbook); })), "");
  row("resident at most", fmt::format("{:.0f} MB", peak_megabytes()), "200 MB");
  return 0;
}

int measure_first_change(const fs::path& folder) {
  OpenWorkbook workbook = opened(folder / "large.gritwright", true);
  std::vector<double> times;
  double whole = 0;
  const auto start = Watch::now();
  for (int i = 0; i < 50; ++i) {
    const auto bag = *workbook.find(Id<Bag>{"B-" + std::to_string(100'001 + i * 89)});
    Bag now = bag.record;
    now.note = fmt::format("typed again {}", i);
    times.push_back(time_of([&] {
      if (!workbook.replace(bag, now, "note of bag")) std::exit(1);
    }));
  }
  const double first = times.front();
  whole = milliseconds_since(start);
  row("first change of a day, its backup beginning", fmt::format("{:.1f} ms", first), "");
  row("  49 more while the backup is made", in_ms(sorted_times({times.begin() + 1, times.end()})), "");
  (void)whole;
  return 0;
}

int measure_json(const fs::path& folder) {
  using nlohmann::json;
  const fs::path file = folder / "large.json";
  row("size of the file", fmt::format("{:.0f} MB", static_cast<double>(fs::file_size(file)) / 1e6), "");
  forget(file);
  json all;
  row("open to first list, file not in the cache", fmt::format("{:.0f} ms", time_of([&] {
        std::ifstream in(file, std::ios::binary);
        all = json::parse(in);
      })),
      "");
  json& records = all.at("records");
  std::vector<double> times;
  for (const std::string& typed : keystrokes()) {
    times.push_back(time_of([&] {
      std::size_t hits = 0;
      for (auto record = records.rbegin(); record != records.rend() && hits < 200; ++record)
        if (record->dump().find(typed) != std::string::npos) ++hits;
    }));
    if (times.size() == 12) break;
  }
  row("keystroke of a search over everything", in_ms(sorted_times(times)), "");
  times.clear();
  for (int i = 0; i < 5; ++i) {
    records.at(static_cast<std::size_t>(i) * 97).at("record")["note"] = fmt::format("typed {}", i);
    times.push_back(time_of([&] {
      const fs::path partial = file.string() + ".partial";
      const std::string text = all.dump();
      const int handle = ::open(partial.c_str(), O_CREAT | O_TRUNC | O_WRONLY | O_CLOEXEC, 0600);
      if (::write(handle, text.data(), text.size()) != static_cast<ssize_t>(text.size()) || ::fsync(handle) != 0) std::exit(1);
      ::close(handle);
      fs::rename(partial, file);
    }));
  }
  row("one change, the whole file written safely", in_ms(sorted_times(times)), "");
  times.clear();
  for (int i = 0; i < 3; ++i)
    times.push_back(time_of([&] {
      // Records lie in the order in which they were made, so that one walk finds what hangs on what.
      std::set<std::string> reached{ref_text(first_bag())};
      const auto names = [&](const json& list, const char* key) {
        return std::ranges::any_of(list, [&](const json& part) { return reached.contains(key == nullptr ? part.get<std::string>() : part.value(key, "")); });
      };
      for (const json& record : records) {
        const json& body = record.at("record");
        bool hangs = reached.contains(body.value("source", "")) || (body.contains("parts") && names(body["parts"], "source"));
        if (body.contains("repottings"))
          for (const json& repotting : body["repottings"]) hangs = hangs || (repotting.contains("grain") && names(repotting["grain"], nullptr));
        if (hangs) reached.insert(record.at("kind").get<std::string>() + ":" + record.at("id").get<std::string>());
      }
      if (reached.size() < 100) std::exit(1);
    }));
  row("trace of a bag to all trees", in_ms(sorted_times(times)), "");
  row("resident at most", fmt::format("{:.0f} MB", peak_megabytes()), "");
  return 0;
}

}  // namespace

int main(int argument_count, char** arguments) {
  const std::vector<std::string> words(arguments + 1, arguments + argument_count);
  LargeSize size;
  if (words.size() >= 3) {
    const int percent = std::stoi(words[2]);
    for (int* part : {&size.bags, &size.sieve_tests, &size.log_entries, &size.trees}) *part = *part / 100 * percent;
  }
  if (words.size() >= 2) {
    const fs::path folder = words[1];
    std::setvbuf(stdout, nullptr, _IOLBF, BUFSIZ);
    if (words[0] == "build") return build(folder, size);
    if (words[0] == "workbook") return measure_workbook(folder);
    if (words[0] == "first-change") return measure_first_change(folder);
    if (words[0] == "json") return measure_json(folder);
  }
  // Twice over, so that the growth is seen.
  for (const int percent : {50, 100}) {
    std::string name = (fs::temp_directory_path() / "gritwright-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) return 1;
    int failed = 0;
    fmt::print("{} log entries, {} bags, {} sieve tests, {} trees\n", size.log_entries / 100 * percent, size.bags / 100 * percent,
               size.sieve_tests / 100 * percent, size.trees / 100 * percent);
    for (const char* what : {"build", "workbook", "first-change", "json"}) {
      if (std::string(what) == "json") fmt::print(" one JSON file, held in memory\n");
      if (std::string(what) == "build") fmt::print(" workbook\n");
      std::fflush(stdout);
      failed = failed != 0 ? failed : std::system(fmt::format("'{}' {} '{}' {}", arguments[0], what, name, percent).c_str());
    }
    std::error_code ignored;
    fs::remove_all(name, ignored);
    if (failed != 0) return 1;
  }
  return 0;
}
