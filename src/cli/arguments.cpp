#include "arguments.hpp"

#include <CLI/CLI.hpp>

namespace gritwright::cli {

void argument(CLI::App& app, const std::string& name, std::string& target, const std::string& help, const Check& check) {
  CLI::Option* const option = app.add_option(name, target, help);
  if (check) option->check(check);
}

void required_argument(CLI::App& app, const std::string& name, std::string& target, const std::string& help) {
  app.add_option(name, target, help)->required();
}

void required_choice(CLI::App& app, const std::string& name, std::string& target, const std::string& help,
                     const std::vector<std::string>& choices) {
  app.add_option(name, target, help)->required()->check(CLI::IsMember(choices));
}

void repeatable(CLI::App& app, const std::string& name, std::vector<std::string>& target, const std::string& help,
                const Check& check) {
  app.add_option(name, target, help)->check(check);
}

void required_repeatable(CLI::App& app, const std::string& name, std::vector<std::string>& target, const std::string& help,
                         const Check& check) {
  app.add_option(name, target, help)->required()->check(check);
}

void counted(CLI::App& app, const std::string& name, unsigned& target, const std::string& help, unsigned least, unsigned most) {
  app.add_option(name, target, help)->check(CLI::Range(least, most));
}

void flag(CLI::App& app, const std::string& name, bool& target, const std::string& help) { app.add_flag(name, target, help); }

void either_or(CLI::App& app, const std::string& one, const std::string& other) {
  app.get_option(one)->excludes(app.get_option(other));
}

}  // namespace gritwright::cli
