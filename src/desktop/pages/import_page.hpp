#pragma once
#include <QString>
#include <QWidget>

#include "gritwright/result.hpp"
#include "models/record_import.hpp"

class QCheckBox;
class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;
class QTableView;

namespace gritwright::desktop {

/// What is wrong and where: "bags.csv, line 3, character 7: no such material."
[[nodiscard]] QString fault_text(const Problem& problem);

/// Records out of a file: what would be added, and every faulty row by its place, before anything is.
class ImportPage : public QWidget {
  Q_OBJECT
 public:
  ImportPage(RecordBook& book, const Catalogue& catalogue, QWidget* parent = nullptr);

  /// Asks for a file; false if none was chosen.
  bool choose_file();
  void show_file(const QString& path);
  [[nodiscard]] RecordImport& import() { return *import_; }
  void take_focus();

 signals:
  void left();

 private:
  void look();
  void show_what_was_found();
  void tell_taken_in(int records);
  void fit();
  void changeEvent(QEvent* event) override;

  RecordBook& book_;
  RecordImport* import_;
  ImportTableModel* table_model_;
  QLabel* file_;
  QComboBox* kind_;
  QCheckBox* replace_;
  QLabel* summary_;
  QListWidget* faults_;
  QTableView* table_;
  QPushButton* take_in_;
  QPushButton* again_;
  QString path_;
  QString waiting_;  ///< chosen while records were being taken in; its turn comes after them
};

}  // namespace gritwright::desktop
