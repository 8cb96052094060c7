#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>
#include <clocale>
#include <iostream>
#include <locale>

#include "support/no_network.hpp"

int main(int argument_count, char** arguments) {
  // The suite runs under the locale of the environment, as the programs do; one that is not installed is an error, not C.
  std::locale::global(std::locale(""));
  if (!gritwright::tests::forbid_network()) std::cout << "this kernel can't forbid the network\n";
  Catch::Session session;
  const int wrong_usage = session.applyCommandLine(argument_count, arguments);
  if (wrong_usage != 0) return wrong_usage;
  std::cout << "locale " << std::setlocale(LC_ALL, nullptr) << ", seed " << session.config().rngSeed() << '\n';
  return session.run();
}
