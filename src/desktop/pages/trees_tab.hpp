#pragma once
#include <QWidget>

#include "gritwright/domain/material.hpp"
#include "models/record_editor.hpp"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;

namespace gritwright::desktop {

class GoneNotice;
class HistoryTable;
class KeptChoice;
class KeptLine;
class RecordForm;
class RecordListSide;
class TreeAirNote;

/// The trees: what they are, how they did over time, when they may be repotted and what was done to them.
class TreesTab : public QWidget {
  Q_OBJECT
 public:
  TreesTab(RecordBook& book, const Catalogue& catalogue, QWidget* parent = nullptr);

  void add_tree();
  void remove_tree();
  void set_units(UnitSystem units);
  [[nodiscard]] RecordListSide& list() { return *list_; }

 signals:
  /// The root-mass plan of this tree is wanted.
  void plan_wanted(const QString& tree);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* form_side();
  QWidget* history_side();
  QWidget* seen_box(QWidget* parent);
  QWidget* repotting_box(QWidget* parent);
  void add_name_rows();
  void add_trunk_rows();
  void add_season_rows();
  void write_seen();
  void write_repotting();
  /// Where the settings hold what was begun for this tree in a field.
  [[nodiscard]] QString kept_under(const char* field) const;
  void begin_entries();
  [[nodiscard]] LogEntry event_of_tree(const QStringList& parts, const std::string& day) const;
  void add_photo();
  void chosen();
  void refresh();
  void refresh_choices();
  void refresh_seen(const Tree& tree);
  void refresh_repottings(const Tree& tree);
  [[nodiscard]] QString state_of(const std::string& id) const;

  RecordBook& book_;
  const Catalogue& catalogue_;
  RecordListSide* list_ = nullptr;
  RecordEditor<Tree> editor_;
  RecordForm* form_ = nullptr;
  GoneNotice* gone_ = nullptr;
  QComboBox* groups_ = nullptr;
  QLabel* title_ = nullptr;
  QLabel* due_ = nullptr;
  TreeAirNote* air_ = nullptr;
  QLabel* seen_fault_ = nullptr;
  QLabel* history_fault_ = nullptr;
  QString entries_of_;  ///< the tree that what stands in the lines of its history was typed for
  QWidget* details_ = nullptr;
  QWidget* history_ = nullptr;
  HistoryTable* seen_ = nullptr;
  QComboBox* seen_as_ = nullptr;
  QLineEdit* seen_day_ = nullptr;
  QLineEdit* seen_note_ = nullptr;
  KeptLine* seen_kept_ = nullptr;
  KeptChoice* seen_as_kept_ = nullptr;
  HistoryTable* repottings_ = nullptr;
  QLineEdit* repotted_day_ = nullptr;
  QComboBox* repotted_pot_ = nullptr;
  QComboBox* repotted_mix_ = nullptr;
  QCheckBox* bare_rooted_ = nullptr;
  QLineEdit* repotted_note_ = nullptr;
  KeptLine* repotted_kept_ = nullptr;
  KeptLine* repotted_day_kept_ = nullptr;
  KeptChoice* repotted_pot_kept_ = nullptr;
  KeptChoice* repotted_mix_kept_ = nullptr;
  UnitSystem units_ = UnitSystem::metric;
};

/// A species group in the reader's words.
[[nodiscard]] QString group_text(SpeciesGroup group);

}  // namespace gritwright::desktop
