// The whole way of a file that is given to the command line: reading, estimates, sentences and JSON, with every explanation. A root mass
// and a design take their time and have targets of their own.
#include <algorithm>
#include <array>
#include <cctype>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "program.hpp"
#include "target.hpp"

using namespace gritwright;

namespace {

std::string verb_for(const std::string& text) {
  static const std::array<std::pair<const char*, const char*>, 5> verbs{{{"gritwright/mix/", "mix"},
                                                                          {"gritwright/container/", "pot"},
                                                                          {"gritwright/pot-test/", "calibrate"},
                                                                          {"gritwright/day/", "batch"},
                                                                          {"gritwright/season/", "batch"}}};
  const auto found = std::ranges::min_element(verbs, {}, [&](const auto& verb) { return text.find(verb.first); });
  return text.find(found->first) == std::string::npos ? "grade" : found->second;
}

std::string answer(std::vector<std::string> arguments, const std::string& text) {
  std::istringstream in(text);
  std::ostringstream out, err;
  const cli::Exit exit = cli::run_program(std::move(arguments), {in, out, err});
  // Refused with a sentence, or answered; a name that leads to another file may lead to none.
  const bool refused = exit == cli::Exit::input_refused || exit == cli::Exit::file_trouble;
  fuzz::must(exit == cli::Exit::done ? !out.str().empty() : refused && !err.str().empty());
  return out.str();
}

bool shows_no_number(const std::string& text) {
  std::string word;
  for (const char sign : text + '\n') {
    const auto letter = static_cast<unsigned char>(sign);
    if (std::isalnum(letter) != 0) {
      word += static_cast<char>(std::tolower(letter));
    } else {
      if (word == "nan" || word == "inf") return true;
      word.clear();
    }
  }
  return false;
}

}  // namespace

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text(fuzz::text_of(data, size));
  if (text.find("/dev") != std::string::npos) return 0;  // a device may be named as a sieve test's file, and keep the reader waiting
  const std::string verb = verb_for(text);
  std::vector<std::string> arguments{verb, "-", "--explain", "--laboratory"};
  if (verb == "mix") arguments.insert(arguments.end(), {"--depth-cm", "6"});
  const std::string told = answer(arguments, text);
  fuzz::must(shows_no_number(text) || !shows_no_number(told));
  arguments.emplace_back("--json");
  const std::string written = answer(arguments, text);
  fuzz::must(written.empty() == told.empty());
  fuzz::must(written.empty() || nlohmann::json::accept(written));
  return 0;
}
