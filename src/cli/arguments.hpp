#pragma once
#include <functional>
#include <string>
#include <vector>

namespace CLI {
class App;
}

// How a verb names its arguments. The parser is a large header; this one file's source alone compiles it.
namespace gritwright::cli {

/// Says what is wrong with a typed text; empty where it is right.
using Check = std::function<std::string(const std::string&)>;

/// A text that may be left out; where it must not, `required_argument`.
void argument(CLI::App& app, const std::string& name, std::string& target, const std::string& help, const Check& check = {});
void required_argument(CLI::App& app, const std::string& name, std::string& target, const std::string& help);
/// A text that must be one of `choices`.
void required_choice(CLI::App& app, const std::string& name, std::string& target, const std::string& help,
                     const std::vector<std::string>& choices);
/// A text that may be given several times.
void repeatable(CLI::App& app, const std::string& name, std::vector<std::string>& target, const std::string& help,
                const Check& check);
void required_repeatable(CLI::App& app, const std::string& name, std::vector<std::string>& target, const std::string& help,
                         const Check& check);
/// A whole number from `least` to `most`.
void counted(CLI::App& app, const std::string& name, unsigned& target, const std::string& help, unsigned least, unsigned most);
void flag(CLI::App& app, const std::string& name, bool& target, const std::string& help);
/// The two named arguments shut each other out.
void either_or(CLI::App& app, const std::string& one, const std::string& other);

}  // namespace gritwright::cli
