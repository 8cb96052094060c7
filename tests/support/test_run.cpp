// What every test program does before its first test. Its main is Catch2's, which the package brings compiled: to compile it takes half a minute.
#define CATCH_CONFIG_EXTERNAL_INTERFACES
#include <catch2/catch.hpp>
#include <clocale>
#include <iostream>
#include <locale>

#include "support/no_network.hpp"

namespace {

class TestRun : public Catch::TestEventListenerBase {
 public:
  using TestEventListenerBase::TestEventListenerBase;

  void testRunStarting(const Catch::TestRunInfo& run) override {
    TestEventListenerBase::testRunStarting(run);
    // The suite runs under the locale of the environment, as the programs do; one that is not installed is an error, not C.
    std::locale::global(std::locale(""));
    if (!gritwright::tests::forbid_network()) std::cout << "this kernel can't forbid the network\n";
    std::cout << "locale " << std::setlocale(LC_ALL, nullptr) << ", seed " << m_config->rngSeed() << '\n';
  }
};

}  // namespace

CATCH_REGISTER_LISTENER(TestRun)
