#pragma once
#include <QWidget>
#include <filesystem>

#include "gritwright/result.hpp"

class QLabel;
class QPushButton;

namespace gritwright::desktop {

class BackupsCard;

/// A record that could not be opened.
struct RecordTrouble {
  std::filesystem::path file;
  std::filesystem::path backups;
  Problems problems;
};

/// What is wrong with the record's file, and what can be done: the newest whole backup, reading only, another file, once more.
class TroublePage : public QWidget {
  Q_OBJECT
 public:
  explicit TroublePage(const RecordTrouble& trouble, QWidget* parent = nullptr);

  [[nodiscard]] BackupsCard& backups() { return *backups_; }
  void take_focus();

 signals:
  void restore_wanted(const QString& backup);
  void open_wanted(const QString& file, bool read_only);
  void other_wanted();

 private:
  QPushButton* add_button(const char* object_name, const QString& text);
  void show_newest();

  BackupsCard* backups_;
  QPushButton* newest_ = nullptr;
  QPushButton* again_ = nullptr;
  QLabel* by_command_ = nullptr;  ///< the last way to what a damaged file holds
  bool is_damaged_ = false;
};

}  // namespace gritwright::desktop
