#pragma once
#include <QFrame>
#include <functional>
#include <vector>

#include "gritwright/domain/species_profile.hpp"
#include "models/parts_finder.hpp"

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QTableWidget;
class QTableWidgetItem;
class QToolButton;

namespace gritwright::desktop {

class FieldForm;
class WishTable;

/// What a search for parts is asked: the group of trees and the pot first, everything else behind "more".
class FindPanel : public QFrame {
  Q_OBJECT
 public:
  FindPanel(Bench& bench, PartsFinder& finder, QWidget* parent = nullptr);

  /// The profiles to start from, in the order they are offered.
  void set_profiles(std::vector<SpeciesProfile> profiles);
  /// Puts the wishes of the profile of that name on the panel; none of that name clears only the name.
  void start_from_profile(const QString& name);
  void show_more(bool more);
  void take_focus();

 signals:
  /// The wishes on the panel shall be what the chosen profile starts with.
  void keep_profile_wanted(const gritwright::SpeciesProfile& profile);

  /// The groups are to be looked at and changed.
  void groups_wanted();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QWidget* first_choices();
  QWidget* more();
  void choose_pot(int index);
  void wish_typed(WishRow row, const WishText& wish);
  [[nodiscard]] QString label_of(WishRow row) const;
  void further_pot_ticked(const QTableWidgetItem* item);
  void candidate_typed(const QTableWidgetItem* item);
  void refresh();
  void refresh_choices();
  void refresh_wishes();
  void refresh_candidates();
  void refresh_further_pots();
  void refresh_faults();
  void fit();

  Bench& bench_;
  PartsFinder& finder_;
  std::vector<SpeciesProfile> profiles_;
  QComboBox* groups_;
  QComboBox* pots_;
  QTableWidget* further_pots_;
  QLabel* pot_;
  QLabel* trouble_;
  QToolButton* more_button_;
  QWidget* more_;
  FieldForm* form_;
  QComboBox* whole_;
  WishTable* wishes_;
  QLabel* wish_faults_;
  QTableWidget* candidates_;
  QLabel* candidate_faults_;
  QPushButton* keep_profile_;
  bool filling_ = false;
};

}  // namespace gritwright::desktop
