#define CATCH_CONFIG_RUNNER
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <catch2/catch.hpp>
#include <clocale>
#include <iostream>

#include "guarded_application.hpp"
#include "plain_labels.hpp"
#include "support/no_network.hpp"
#include "theme.hpp"
#include "translation.hpp"

int main(int argument_count, char** arguments) {
  gritwright::desktop::GuardedApplication application(argument_count, arguments);
  QApplication::setOrganizationName(QStringLiteral("Gritwright"));
  QApplication::setApplicationName(QStringLiteral("gritwright-desktop-test"));
  // The user's own settings and files are never touched.
  QTemporaryDir folder;
  QStandardPaths::setTestModeEnabled(true);
  QSettings::setDefaultFormat(QSettings::IniFormat);
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.path());
  gritwright::desktop::install_translations(application, QLocale(QLocale::English));
  gritwright::desktop::show_labels_plainly(application);
  gritwright::desktop::apply_theme(application, gritwright::desktop::Theme::light, 100);
  // A printer is asked for by the socket of this machine, never over a network.
  qputenv("CUPS_SERVER", "/run/cups/cups.sock");
  if (!gritwright::tests::forbid_network()) std::cout << "this kernel can't forbid the network\n";
  Catch::Session session;
  const int wrong_usage = session.applyCommandLine(argument_count, arguments);
  if (wrong_usage != 0) return wrong_usage;
  std::cout << "locale " << std::setlocale(LC_ALL, nullptr) << ", seed " << session.config().rngSeed() << '\n';
  return session.run();
}
