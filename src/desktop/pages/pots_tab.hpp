#pragma once
#include <QWidget>
#include <map>

#include "models/record_editor.hpp"

class QCheckBox;
class QComboBox;
class QLabel;

namespace gritwright::desktop {

class FigurePanel;
class GoneNotice;
class NewPotForm;
class PotDrawing;
class RecordForm;
class RecordListSide;

/// The grower's pots: shape and inside lengths with a picture that follows, water fill, own mass, drain holes and feet, free or not.
class PotsTab : public QWidget {
  Q_OBJECT
 public:
  explicit PotsTab(RecordBook& book, QWidget* parent = nullptr);

  /// Begins one: it is kept once its lengths are there.
  void add_pot();
  void remove_pot();
  void set_units(UnitSystem units);
  [[nodiscard]] RecordListSide& list() { return *list_; }

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* form_side();
  QWidget* answer_side();
  void add_length_rows();
  void add_fill_rows();
  void add_paper_rows();
  void set_shape(Shape shape);
  void chosen();
  void keep_fresh();
  void refresh();
  /// Trees that stand in the pot, or that it is free.
  [[nodiscard]] QString state_of(const std::string& id);

  RecordBook& book_;
  RecordListSide* list_ = nullptr;
  RecordEditor<RecordedContainer> editor_;
  NewPotForm* fresh_ = nullptr;
  RecordForm* form_ = nullptr;
  GoneNotice* gone_ = nullptr;
  QComboBox* shapes_ = nullptr;
  QCheckBox* given_away_ = nullptr;
  QLabel* title_ = nullptr;
  QLabel* mind_ = nullptr;  ///< what looks mistyped, though it can be
  QWidget* details_ = nullptr;
  PotDrawing* drawing_ = nullptr;
  FigurePanel* figures_ = nullptr;
  bool drum_wanted_ = false;  ///< chosen, and not saved before its diameter at half the depth is typed
  std::map<std::string, std::vector<std::string>> used_;
  std::int64_t used_revision_ = -1;
  UnitSystem units_ = UnitSystem::metric;
};

}  // namespace gritwright::desktop
