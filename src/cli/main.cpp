#include <exception>
#include <iostream>

#include "program.hpp"

int main(int argument_count, char** arguments) {
  using namespace gritwright::cli;
  Exit exit = Exit::done;
  try {
    exit = run_program({arguments + 1, arguments + argument_count}, {std::cin, std::cout, std::cerr});
  } catch (const std::exception& fault) {
    std::cerr << "gritwright: a fault of the program, not of your input: " << fault.what() << '\n';
    constexpr int software_fault = 70;  // as sysexits.h has it; none of the contract's numbers means this
    return software_fault;
  }
  std::cout.flush();
  // A full disk shows only when the text is written out.
  if (!std::cout) return static_cast<int>(Exit::file_trouble);
  return static_cast<int>(exit);
}
