#pragma once
#include <QApplication>
#include <QLocale>
#include <QTemporaryDir>
#include <QTest>
#include <catch2/catch.hpp>
#include <memory>
#include <ostream>
#include <string>

#include "main_window.hpp"
#include "models/bench.hpp"
#include "models/record_book.hpp"

/// So that a failed comparison shows the text.
std::ostream& operator<<(std::ostream& out, const QString& text);

namespace gritwright::desktop {

/// A window on an empty bench with the shipped catalogue, shown and active.
enum class Start { sieving, mixes };

class OpenWindow {
 public:
  explicit OpenWindow(Start start = Start::sieving);

  QTemporaryDir folder;
  std::unique_ptr<RecordBook> record;  ///< a new one in a folder of its own
  Bench bench;
  MainWindow window;

  /// The widget of that name; fails the test if there is none.
  template <class Widget = QWidget>
  Widget* find(const char* object_name) {
    auto* found = window.findChild<Widget*>(QString::fromLatin1(object_name));
    INFO("object name " << object_name);
    REQUIRE(found != nullptr);
    return found;
  }

  /// Triggers the action of that name as a menu would.
  void trigger(const char* object_name);

  /// Types into whatever has the focus, an editor included.
  void type(const QString& text);
  void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);

  /// Puts the cursor into the stack at `row`, `column`.
  void go_to_cell(int row, int column);
  [[nodiscard]] QString cell(int row, int column);
};

/// Text of that size as long as it lives.
class LargeText {
 public:
  explicit LargeText(int percent = 150);
  ~LargeText();
  LargeText(const LargeText&) = delete;
  LargeText& operator=(const LargeText&) = delete;
};

/// Of what scrolls up and down in the window: those whose content is and stays wider than they are, so that its edge is out of sight.
[[nodiscard]] std::string cut_at_the_side(const QWidget& window);

/// The texts, numbers and dates of a language as long as it lives.
class WithLanguage {
 public:
  explicit WithLanguage(const char* code);
  ~WithLanguage();
  WithLanguage(const WithLanguage&) = delete;
  WithLanguage& operator=(const WithLanguage&) = delete;

 private:
  QLocale former_;
};

/// A figure as the locale of this run shows it.
[[nodiscard]] QString local(const char* figure);

[[nodiscard]] const Catalogue& test_catalogue();

/// A finished component: openings and masses coarse to fine, then the pan.
[[nodiscard]] ComponentSheet finished_component(const QString& name, const QString& material, const std::vector<std::pair<const char*, const char*>>& stack,
                                                const char* pan, const char* dry_mass);

/// Two graded components and a straight tray: everything can be computed.
[[nodiscard]] BenchState complete_bench();

}  // namespace gritwright::desktop
