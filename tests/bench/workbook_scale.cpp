// A workbook of many years: opening, searching, changing and tracing it, and what it takes of memory; beside it the same records in one
// JSON file that is held in memory and written whole, safely, at every change. Each is measured in a process of its own.
#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
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

/// By the clock on the wall, and of the processor: on a machine with other work the first is the longer one.
struct Taken {
  double wall = 0;
  double computing = 0;
};

template <class Work>
Taken time_of(Work work) {
  const auto start = Watch::now();
  const std::clock_t computed = std::clock();
  work();
  return {std::chrono::duration<double, std::milli>(Watch::now() - start).count(), 1000.0 * static_cast<double>(std::clock() - computed) / CLOCKS_PER_SEC};
}

/// The same work done many times.
class Times {
 public:
  template <class Work>
  void add(Work work) {
    all_.push_back(time_of(work));
  }
  [[nodiscard]] std::size_t size() const { return all_.size(); }
  /// The index of the one that computed longest.
  [[nodiscard]] std::size_t slowest() const { return static_cast<std::size_t>(std::ranges::max_element(all_, {}, &Taken::computing) - all_.begin()); }
  [[nodiscard]] std::string text() const {
    return fmt::format("{:.1f} ms, worst {:.1f} (computing {:.1f}, worst {:.1f})", median(&Taken::wall), std::ranges::max(all_, {}, &Taken::wall).wall,
                       median(&Taken::computing), std::ranges::max(all_, {}, &Taken::computing).computing);
  }

 private:
  [[nodiscard]] double median(double Taken::*part) const {
    std::vector<double> sorted;
    for (const Taken& one : all_) sorted.push_back(one.*part);
    std::ranges::sort(sorted);
    return sorted[sorted.size() / 2];
  }
  std::vector<Taken> all_;
};

std::string text_of(const Taken& taken) { return fmt::format("{:.1f} ms (computing {:.1f})", taken.wall, taken.computing); }

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

void row(const std::string& what, const std::string& figure, const char* limit = "") { fmt::print("  {:<46} {:<58} {}\n", what, figure, limit); }

void must(bool done) {
  if (done) return;
  fmt::print(stderr, "a step of the bench failed\n");
  std::exit(1);
}

int build(const fs::path& folder, const LargeSize& size) {
  OpenWorkbook workbook = opened(folder / "large.gritwright");
  row("taken in through the import", text_of(time_of([&] { must(fill_large(workbook, size).ok()); })));
  row("exported as JSON", text_of(time_of([&] {
        std::ofstream out(folder / "large.json", std::ios::binary);
        export_workbook(workbook, out);
      })));
  return 0;
}

Times typed_searches(const OpenWorkbook& workbook, const SearchQuery& narrowing) {
  Times times;
  for (const std::string& typed : keystrokes()) {
    SearchQuery query = narrowing;
    query.words = typed;
    times.add([&] { (void)search(workbook, query); });
  }
  return times;
}

/// As the log on screen answers a letter: how many there are, and the rows in sight.
Times typed_in_log(const OpenWorkbook& workbook, ListFilter filter) {
  Times times;
  filter.limit = 100;
  filter.without_small = true;
  for (const std::string& typed : keystrokes()) {
    filter.words = typed;
    times.add([&] { must(workbook.count(RecordKind::log_entry, filter) >= workbook.list(RecordKind::log_entry, filter).size()); });
  }
  return times;
}

Times typed_notes(OpenWorkbook& workbook, int count) {
  Times times;
  for (int i = 0; i < count; ++i) {
    const auto bag = workbook.find(Id<Bag>{"B-" + std::to_string(100'001 + i * 47)});
    must(bag.has_value());
    Bag now = bag->record;
    now.note = fmt::format("typed {}, {}", i, now.note);
    times.add([&] { must(workbook.replace(*bag, now, "note of bag").ok()); });
  }
  return times;
}

int measure_workbook(const fs::path& folder) {
  const fs::path file = folder / "large.gritwright";
  row("size of the file", fmt::format("{:.0f} MB", static_cast<double>(fs::file_size(file)) / 1e6));
  forget(file);
  std::optional<OpenWorkbook> held;
  ListFilter first_page;
  first_page.limit = 200;
  row("open to first lists, file not in the cache", text_of(time_of([&] {
        held.emplace(opened(file));
        must(!held->list(RecordKind::bag, first_page).empty() && !held->list(RecordKind::log_entry, first_page).empty());
      })),
      "500 ms");
  OpenWorkbook& workbook = *held;
  row("  every bag listed with stock and tests", text_of(time_of([&] { (void)workbook.list(RecordKind::bag); })));
  row("  every log entry listed", text_of(time_of([&] { (void)workbook.list(RecordKind::log_entry); })));
  const Times plain = typed_searches(workbook, {});
  row("keystroke of a search over everything", plain.text(), "30 ms");
  row("  the slowest", keystrokes()[plain.slowest()]);
  SearchQuery year;
  year.from_day = "2012-01-01";
  year.to_day = "2012-12-31";
  year.material = "pumice";
  row("  chosen: a year and a material", text_of(time_of([&] { (void)search(workbook, year); })));
  row("  keystroke narrowed to them", typed_searches(workbook, year).text(), "30 ms");
  SearchQuery tree;
  tree.tree = Id<Tree>{"TR-100500"};
  row("  chosen: a tree", text_of(time_of([&] { (void)search(workbook, tree); })));
  row("  keystroke narrowed to it", typed_searches(workbook, tree).text(), "30 ms");
  const Times in_log = typed_in_log(workbook, {});
  row("keystroke in the log on screen, counted and listed", in_log.text(), "30 ms");
  row("  the slowest", keystrokes()[in_log.slowest()]);
  ListFilter about;
  about.about = RecordRef{RecordKind::tree, "TR-100500"};
  row("  keystroke in the log about a tree", typed_in_log(workbook, about).text(), "30 ms");
  row("one change, durable", typed_notes(workbook, 200).text(), "15 ms");
  Times traces;
  for (int i = 0; i < 20; ++i) traces.add([&] { must(trace(workbook, first_bag(), TraceDirection::forward)->steps.size() > 100); });
  row("trace of a bag to all trees", traces.text(), "50 ms");
  row("  its recall list", text_of(time_of([&] { (void)recall_list(workbook, first_bag()); })));
  row("  what the sick trees share", text_of(time_of([&] { (void)shared_traits(workbook); })));
  row("resident at most", fmt::format("{:.0f} MB", peak_megabytes()), "200 MB");
  return 0;
}

int measure_first_change(const fs::path& folder) {
  OpenWorkbook workbook = opened(folder / "large.gritwright", true);
  row("first change of a day, its backup beginning", typed_notes(workbook, 1).text());
  row("  49 more while the backup is made", typed_notes(workbook, 49).text());
  return 0;
}

int measure_json(const fs::path& folder) {
  using nlohmann::json;
  const fs::path file = folder / "large.json";
  row("size of the file", fmt::format("{:.0f} MB", static_cast<double>(fs::file_size(file)) / 1e6));
  forget(file);
  json all;
  row("open to first list, file not in the cache", text_of(time_of([&] {
        std::ifstream in(file, std::ios::binary);
        all = json::parse(in);
      })));
  json& records = all.at("records");
  Times searches;
  for (const char* typed : {"p", "pumice d", "B-101234", "xylophone"})
    searches.add([&] {
      std::size_t hits = 0;
      for (auto record = records.rbegin(); record != records.rend() && hits < 200; ++record)
        if (record->dump().find(typed) != std::string::npos) ++hits;
    });
  row("keystroke of a search over everything", searches.text());
  Times changes;
  for (std::size_t i = 0; i < 5; ++i) {
    records.at(i * 47).at("record")["note"] = fmt::format("typed {}", i);
    changes.add([&] {
      const fs::path partial = file.string() + ".partial";
      const std::string text = all.dump();
      const int handle = ::open(partial.c_str(), O_CREAT | O_TRUNC | O_WRONLY | O_CLOEXEC, 0600);
      must(::write(handle, text.data(), text.size()) == static_cast<ssize_t>(text.size()) && ::fsync(handle) == 0);
      ::close(handle);
      fs::rename(partial, file);
    });
  }
  row("one change, the whole file written safely", changes.text());
  Times traces;
  for (int i = 0; i < 3; ++i)
    traces.add([&] {
      // Records lie in the order in which they were made, so that one walk finds what hangs on what.
      std::set<std::string> reached{ref_text(first_bag())};
      const auto names_reached = [&](const json& ref) { return ref.is_string() && reached.contains(ref.get<std::string>()); };
      for (const json& record : records) {
        const json& body = record.at("record");
        bool hangs = body.contains("source") && names_reached(body["source"]);
        if (body.contains("parts"))
          for (const json& part : body["parts"]) hangs = hangs || (part.contains("source") && names_reached(part["source"]));
        if (body.contains("repottings"))
          for (const json& repotting : body["repottings"])
            for (const json& grain : repotting.value("grain", json::array())) hangs = hangs || names_reached(grain);
        if (hangs) reached.insert(record.at("kind").get<std::string>() + ":" + record.at("id").get<std::string>());
      }
      must(reached.size() > 100);
    });
  row("trace of a bag to all trees", traces.text());
  row("resident at most", fmt::format("{:.0f} MB", peak_megabytes()));
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
