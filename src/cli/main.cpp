#include <iostream>

#include "program.hpp"

int main(int argument_count, char** arguments) {
  using namespace gritwright::cli;
  const Exit exit = run_program({arguments + 1, arguments + argument_count}, {std::cin, std::cout, std::cerr});
  std::cout.flush();
  // A full disk shows only when the text is written out.
  if (!std::cout) return static_cast<int>(Exit::file_trouble);
  return static_cast<int>(exit);
}
