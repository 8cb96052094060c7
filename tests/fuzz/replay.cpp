// Drives one target without libFuzzer: replay SEED RUNS FOLDER-OR-FILE... runs it on every seed file, then on RUNS spoiled ones.
// The random seed is printed: the same numbers give the same inputs again. Seed 0 takes a new one.
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <vector>

#include "target.hpp"

namespace {

namespace fs = std::filesystem;

void read_into(std::vector<std::string>& seeds, const fs::path& file) {
  std::ifstream stream(file, std::ios::binary);
  seeds.emplace_back(std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>());
}

class Spoiler {
 public:
  Spoiler(const std::vector<std::string>& seeds, unsigned seed) : seeds_(seeds), random_(seed) {}

  std::string next() {
    std::string text = seeds_[below(seeds_.size())];
    for (std::size_t blows = 1 + below(6); blows > 0; --blows) {
      const std::size_t at = below(text.size() + 1);
      switch (below(6)) {
        case 0: if (at < text.size()) text[at] = static_cast<char>(below(256)); break;
        case 1: text.erase(at, 1 + below(16)); break;
        case 2: text.insert(at, token()); break;
        case 3: {
          const std::string& other = seeds_[below(seeds_.size())];
          text = text.substr(0, at) + other.substr(below(other.size() + 1));
          break;
        }
        case 4: text.insert(at, text.substr(below(text.size() + 1), 1 + below(40))); break;
        default: replace_number(text, at); break;
      }
    }
    return text;
  }

 private:
  std::size_t below(std::size_t end) { return std::uniform_int_distribution<std::size_t>(0, end - 1)(random_); }

  const char* token() {
    static const char* const tokens[] = {"-", "1e308", "1e-308", "1e999", ",", ";", "\"", "{", "[", "]", "}", "\n", "\r", "\t",
                                         "nan", "\\u0000", "\xFF", "\xEF\xBB\xBF", "0", "#", ":", "pan", "null", "true", "3/8 in"};
    return tokens[below(std::size(tokens))];
  }

  void replace_number(std::string& text, std::size_t from) {
    static const char* const numbers[] = {"0", "-0", "-1", "1e-12", "1e12", "1e300", "5e-324", "0.999999999999", "100", "1000000"};
    const std::size_t first = text.find_first_of("0123456789", from);
    if (first == std::string::npos) return;
    std::size_t last = text.find_first_not_of("0123456789.", first);
    if (last == std::string::npos) last = text.size();
    text.replace(first, last - first, numbers[below(std::size(numbers))]);
  }

  const std::vector<std::string>& seeds_;
  std::mt19937 random_;
};

void run(const std::string& text) { LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(text.data()), text.size()); }

}  // namespace

int main(int count, char** arguments) {
  if (count < 4) {
    std::fprintf(stderr, "usage: %s SEED RUNS FOLDER-OR-FILE...\n", arguments[0]);
    return 2;
  }
  std::vector<std::string> seeds;
  for (int i = 3; i < count; ++i) {
    if (!fs::is_directory(arguments[i])) {
      read_into(seeds, arguments[i]);
      continue;
    }
    for (const auto& entry : fs::directory_iterator(arguments[i])) {
      if (entry.is_regular_file()) read_into(seeds, entry.path());
    }
  }
  std::erase(seeds, std::string());
  if (seeds.empty()) {
    std::fprintf(stderr, "no seeds\n");
    return 1;
  }
  std::ranges::sort(seeds);
  for (const std::string& text : seeds) run(text);
  unsigned seed = static_cast<unsigned>(std::strtoul(arguments[1], nullptr, 10));
  if (seed == 0) seed = std::random_device{}();
  std::printf("%zu seeds, then %s spoiled ones, random seed %u\n", seeds.size(), arguments[2], seed);
  std::fflush(stdout);
  Spoiler spoiler(seeds, seed);
  for (long runs = std::strtol(arguments[2], nullptr, 10); runs > 0; --runs) run(spoiler.next());
}
