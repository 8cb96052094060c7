#pragma once
#include <QWidget>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "gritwright/domain/sieve_set.hpp"
#include "models/record_book.hpp"
#include "settings.hpp"

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QTableWidget;

namespace gritwright::desktop {

class BackupsCard;
class ColumnScroll;

/// What the user prefers, and the sieves owned. Every change but of the language holds at once; there is no button to confirm.
class SettingsPage : public QWidget {
  Q_OBJECT
 public:
  /// Without a record the sieves owned cannot be told.
  SettingsPage(RecordBook* book, const Settings& settings, QWidget* parent = nullptr);

  /// After they were changed elsewhere, by a menu.
  void show_settings(const Settings& settings);
  void add_sieve_set();
  void take_focus();
  void show_backups();

 signals:
  void settings_changed(const Settings& settings);
  void restore_wanted(const QString& backup);
  void look_wanted(const QString& backup);

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  QWidget* choices();
  QWidget* backups_row(QWidget* parent);
  QWidget* sieves();
  QWidget* record_card();
  QComboBox* chooser(QGridLayout* grid, const char* object_name, const QString& label, const QStringList& texts);
  void take();
  void fit();
  void read_sets();
  void take_cell(int row, int column);
  void remove_sieve_set(int row);
  void show_refused();

  RecordBook* book_;
  Settings settings_;
  QComboBox* language_ = nullptr;
  QComboBox* units_ = nullptr;
  QComboBox* theme_ = nullptr;
  QComboBox* text_size_ = nullptr;
  QComboBox* paper_ = nullptr;
  QCheckBox* laboratory_ = nullptr;
  QLineEdit* backups_ = nullptr;
  BackupsCard* kept_backups_ = nullptr;  ///< null without a record
  QTableWidget* sets_ = nullptr;
  ColumnScroll* scroll_ = nullptr;
  QLabel* fault_ = nullptr;
  struct Refused {
    QString text;
    QString sentence;
  };
  std::map<std::pair<std::string, int>, Refused> refused_;  ///< what was typed of a set into a column and can't be read, until it is put right
  std::vector<Stored<SieveSet>> shown_sets_;
  bool filling_ = false;
};

/// The openings of a set as they are typed: "8 5.6 4".
[[nodiscard]] QString openings_text(const std::vector<OwnedSieve>& sieves);
/// Read back, put in order coarse to fine; the problems of what can't be read.
[[nodiscard]] Result<std::vector<OwnedSieve>> sieves_of(const QString& text);

}  // namespace gritwright::desktop
