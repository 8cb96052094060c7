// What the window's tests have before the first of them, and until the last has ended: an application without the user's settings and files.
#define CATCH_CONFIG_EXTERNAL_INTERFACES
#include <QApplication>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <array>
#include <catch2/catch.hpp>
#include <clocale>
#include <iostream>
#include <optional>

#include "guarded_application.hpp"
#include "plain_labels.hpp"
#include "support/no_network.hpp"
#include "theme.hpp"
#include "translation.hpp"
#include "widgets/whole_choice.hpp"
#include "widgets/whole_hint.hpp"

namespace {

class WindowTestRun : public Catch::TestEventListenerBase {
 public:
  using TestEventListenerBase::TestEventListenerBase;

  void testRunStarting(const Catch::TestRunInfo& run) override {
    TestEventListenerBase::testRunStarting(run);
    application_.emplace(argument_count_, arguments_.data());
    QApplication::setOrganizationName(QStringLiteral("Gritwright"));
    QApplication::setApplicationName(QStringLiteral("gritwright-desktop-test"));
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    gritwright::desktop::install_translations(*application_, QLocale(QLocale::English));
    gritwright::desktop::show_labels_plainly(*application_);
    gritwright::desktop::show_whole_hints(*application_);
    gritwright::desktop::show_whole_choices(*application_);
    gritwright::desktop::apply_theme(*application_, gritwright::desktop::Theme::light, 100);
    // A printer is asked for by the socket of this machine, never over a network.
    qputenv("CUPS_SERVER", "/run/cups/cups.sock");
    if (!gritwright::tests::forbid_network()) std::cout << "this kernel can't forbid the network\n";
    std::cout << "locale " << std::setlocale(LC_ALL, nullptr) << ", seed " << m_config->rngSeed() << '\n';
  }

  // What one test chose of units or paper is not another's: the order is random.
  void testCaseStarting(const Catch::TestCaseInfo& test) override {
    TestEventListenerBase::testCaseStarting(test);
    QSettings().clear();
  }

  void testRunEnded(const Catch::TestRunStats& stats) override {
    TestEventListenerBase::testRunEnded(stats);
    application_.reset();
  }

 private:
  std::array<char, 13> name_{"test_desktop"};
  std::array<char*, 2> arguments_{name_.data(), nullptr};
  int argument_count_ = 1;
  QTemporaryDir folder_;
  std::optional<gritwright::desktop::GuardedApplication> application_;
};

}  // namespace

CATCH_REGISTER_LISTENER(WindowTestRun)
