// A workbook of many years: opening, searching, changing and tracing it, and what it takes of memory; beside it the same records in one
// JSON file that is held in memory and written whole, safely, at every change. Each is measured in a process of its own, which writes its
// figures as lines of key and value, and all of it twice over, so that the growth is seen.
#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "bench_table.hpp"
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

/// A figure of the process that measures, for the one that prints.
void tell(const std::string& key, double value) { fmt::print("{} {}\n", key, value); }

void tell(const std::string& key, const Taken& taken) {
  tell(key, taken.wall);
  tell(key + ".computing", taken.computing);
}

/// The same work done many times.
class Times {
 public:
  template <class Work>
  void add(Work work) {
    all_.push_back(time_of(work));
  }
  [[nodiscard]] Taken median() const { return {middle(&Taken::wall), middle(&Taken::computing)}; }
  [[nodiscard]] Taken worst() const { return {std::ranges::max(all_, {}, &Taken::wall).wall, std::ranges::max(all_, {}, &Taken::computing).computing}; }

 private:
  [[nodiscard]] double middle(double Taken::*part) const {
    std::vector<double> sorted;
    for (const Taken& one : all_) sorted.push_back(one.*part);
    std::ranges::sort(sorted);
    return sorted[sorted.size() / 2];
  }
  std::vector<Taken> all_;
};

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

void must(bool done) {
  if (done) return;
  fmt::print(stderr, "a step of the bench failed\n");
  std::exit(1);
}

int build(const fs::path& folder, const LargeSize& size) {
  OpenWorkbook workbook = opened(folder / "large.gritwright");
  tell("import", time_of([&] { must(fill_large(workbook, size).ok()); }));
  tell("export", time_of([&] {
         std::ofstream out(folder / "large.json", std::ios::binary);
         must(export_workbook(workbook, out).empty());
       }));
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
  tell("file", static_cast<double>(fs::file_size(file)) / 1e6);
  forget(file);
  std::optional<OpenWorkbook> held;
  ListFilter first_page;
  first_page.limit = 200;
  tell("open", time_of([&] {
         held.emplace(opened(file));
         must(!held->list(RecordKind::bag, first_page).empty() && !held->list(RecordKind::log_entry, first_page).empty());
       }));
  OpenWorkbook& workbook = *held;
  tell("bags", time_of([&] { (void)workbook.list(RecordKind::bag); }));
  tell("entries", time_of([&] { (void)workbook.list(RecordKind::log_entry); }));
  tell("search", typed_searches(workbook, {}).worst());
  SearchQuery year;
  year.from_day = "2012-01-01";
  year.to_day = "2012-12-31";
  year.material = "pumice";
  tell("year", time_of([&] { (void)search(workbook, year); }));
  tell("search-year", typed_searches(workbook, year).worst());
  SearchQuery tree;
  tree.tree = Id<Tree>{"TR-100500"};
  tell("tree", time_of([&] { (void)search(workbook, tree); }));
  tell("search-tree", typed_searches(workbook, tree).worst());
  tell("log", typed_in_log(workbook, {}).worst());
  ListFilter about;
  about.about = RecordRef{RecordKind::tree, "TR-100500"};
  tell("log-tree", typed_in_log(workbook, about).worst());
  const Times changes = typed_notes(workbook, 200);
  tell("change", changes.median());
  tell("change-worst", changes.worst());
  Times traces;
  for (int i = 0; i < 20; ++i) traces.add([&] { must(trace(workbook, first_bag(), TraceDirection::forward)->steps.size() > 100); });
  tell("trace", traces.median());
  tell("recall", time_of([&] { (void)recall_list(workbook, first_bag()); }));
  tell("shared", time_of([&] { (void)shared_traits(workbook); }));
  tell("memory", peak_megabytes());
  return 0;
}

int measure_first_change(const fs::path& folder) {
  OpenWorkbook workbook = opened(folder / "large.gritwright", true);
  tell("first-change", typed_notes(workbook, 1).median());
  tell("change-in-backup", typed_notes(workbook, 49).worst());
  return 0;
}

int measure_json(const fs::path& folder) {
  using nlohmann::json;
  const fs::path file = folder / "large.json";
  tell("file", static_cast<double>(fs::file_size(file)) / 1e6);
  forget(file);
  json all;
  tell("open", time_of([&] {
         std::ifstream in(file, std::ios::binary);
         all = json::parse(in);
       }));
  json& records = all.at("records");
  Times searches;
  for (const char* typed : {"p", "pumice d", "B-101234", "xylophone"})
    searches.add([&] {
      std::size_t hits = 0;
      for (auto record = records.rbegin(); record != records.rend() && hits < 200; ++record)
        if (record->dump().find(typed) != std::string::npos) ++hits;
    });
  tell("search", searches.worst());
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
  tell("change", changes.median());
  tell("change-worst", changes.worst());
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
  tell("trace", traces.median());
  tell("memory", peak_megabytes());
  return 0;
}

struct Figure {
  const char* key;
  const char* what;
  const char* unit;
  std::optional<double> limit{};
};

constexpr std::array measured_figures{Figure{"open", "workbook: opened to the first lists, file not in the cache", "ms", 500},
                             Figure{"search", "workbook: keystroke of a search over everything, worst", "ms", 30},
                             Figure{"search-year", "workbook: the same within a year and a material, worst", "ms", 30},
                             Figure{"search-tree", "workbook: the same about a tree, worst", "ms", 30},
                             Figure{"log", "workbook: keystroke in the log on screen, counted and listed, worst", "ms", 30},
                             Figure{"log-tree", "workbook: the same about a tree, worst", "ms", 30},
                             Figure{"change", "workbook: one change, durable", "ms", 15},
                             Figure{"change-worst", "workbook: one change, durable, worst", "ms"},
                             Figure{"trace", "workbook: a bag followed to all trees", "ms", 50},
                             Figure{"memory", "workbook: memory at its highest", "MB", 200},
                             Figure{"file", "workbook: size of the file", "MB"},
                             Figure{"first-change", "workbook: first change of a day, its backup beginning", "ms"},
                             Figure{"change-in-backup", "workbook: change while the backup is made, worst of 49", "ms"},
                             Figure{"year", "workbook: a year and a material chosen", "ms"},
                             Figure{"tree", "workbook: a tree chosen", "ms"},
                             Figure{"recall", "workbook: recall list of a bag in all trees", "ms"},
                             Figure{"shared", "workbook: what the sick trees share", "ms"},
                             Figure{"bags", "workbook: every bag listed with stock and tests", "ms"},
                             Figure{"entries", "workbook: every log entry listed", "ms"},
                             Figure{"import", "workbook: all records imported", "ms"},
                             Figure{"export", "workbook: all records exported as JSON", "ms"}};

using Figures = std::map<std::string, double>;

/// What another process of this program measures; empty where it failed.
Figures measured(const char* program, const char* what, const std::string& folder, int percent) {
  Figures found;
  std::FILE* pipe = popen(fmt::format("'{}' {} '{}' {}", program, what, folder, percent).c_str(), "r");
  if (pipe == nullptr) return {};
  std::array<char, 100> key{};
  for (double value = 0; std::fscanf(pipe, "%99s %lf", key.data(), &value) == 2;) found[key.data()] = value;
  return pclose(pipe) == 0 ? found : Figures{};
}

/// The figures of the workbook and of the JSON file; nothing where a step failed.
std::optional<std::array<Figures, 2>> both(const char* program, int percent) {
  std::string folder = (fs::temp_directory_path() / "gritwright-XXXXXX").string();
  if (::mkdtemp(folder.data()) == nullptr) return std::nullopt;
  std::array<Figures, 2> found;
  bool complete = true;
  for (const char* what : {"build", "workbook", "first-change", "json"}) {
    Figures some = complete ? measured(program, what, folder, percent) : Figures{};
    complete = !some.empty();
    found[std::string(what) == "json" ? 1 : 0].merge(some);
  }
  std::error_code ignored;
  fs::remove_all(folder, ignored);
  return complete ? std::optional(found) : std::nullopt;
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
    if (words[0] == "build") return build(folder, size);
    if (words[0] == "workbook") return measure_workbook(folder);
    if (words[0] == "first-change") return measure_first_change(folder);
    if (words[0] == "json") return measure_json(folder);
  }
  const auto half = both(arguments[0], 50), whole = both(arguments[0], 100);
  if (!half || !whole) return 1;
  fmt::print("a workbook of {} log entries, {} bags, {} sieve tests and {} trees:\n", size.log_entries, size.bags, size.sieve_tests, size.trees);
  const auto& [workbook, json_file] = *whole;
  for (const Figure& figure : measured_figures) {
    bench::Row row{figure.what, figure.unit, workbook.at(figure.key), figure.limit};
    if (const auto theirs = json_file.find(figure.key); theirs != json_file.end()) {
      row.peer = "one JSON file, held in memory and written whole";
      row.theirs = theirs->second;
    }
    bench::print(row);
    // Where others are at work too, what the processors did for it says more than the clock on the wall.
    if (const auto computing = workbook.find(std::string(figure.key) + ".computing"); computing != workbook.end())
      bench::print({"  of it on the processors", figure.unit, computing->second});
    bench::print({"  with half the records", figure.unit, half->front().at(figure.key)});
  }
  return 0;
}
