#pragma once
#include <QDialog>
#include <QPointer>
#include <QStringList>
#include <QTimer>
#include <atomic>
#include <chrono>
#include <random>
#include <thread>

#include "support.hpp"

namespace gritwright::desktop {

/// Ends the program with what was done last if `beat` is not heard for a while: a dialogue that nobody answers, or a loop.
class Watchdog {
 public:
  explicit Watchdog(std::chrono::seconds patience);
  ~Watchdog();
  Watchdog(const Watchdog&) = delete;
  Watchdog& operator=(const Watchdog&) = delete;
  void beat() { ++beats_; }

 private:
  std::atomic<std::uint64_t> beats_ = 0;
  std::atomic<bool> done_ = false;
  std::thread thread_;
};

/// Somebody without a plan at the window: types, presses keys, clicks on whatever is enabled, drags, triggers actions of the menus, pastes,
/// undoes and answers every dialogue. The same seed does the same, but for what runs in the background. Files are read from and written
/// to `folder` alone.
class Monkey {
 public:
  Monkey(OpenWindow& open, std::mt19937& random, const QString& folder, Watchdog& watchdog);

  /// One thing a user might do, and all that follows from it.
  void act();
  /// Closes what stands open before the window and leaves the field the cursor is in.
  void rest();
  /// What was done last, newest at the end.
  [[nodiscard]] std::string trail() const;
  [[nodiscard]] int dialogues_answered() const { return answered_; }

 private:
  int below(int count) { return static_cast<int>(random_() % static_cast<std::uint32_t>(count)); }
  bool chance(int percent) { return below(100) < percent; }
  void note(const QString& what);
  QWidget* somewhere();
  void type();
  void press();
  void click();
  void drag();
  void trigger();
  void paste();
  void undo_or_redo();
  void in_popup(QWidget& popup);
  void answer();
  void answer_dialogue(QDialog& dialog);
  void name_a_file(QDialog& dialog);

  OpenWindow& open_;
  std::mt19937& random_;
  QString folder_;
  Watchdog& watchdog_;
  QTimer answering_;
  QPointer<QDialog> last_dialogue_;
  int times_answered_ = 0;
  int answered_ = 0;
  QStringList trail_;
};

}  // namespace gritwright::desktop
