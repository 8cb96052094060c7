#pragma once
#include <QWidget>
#include <functional>
#include <map>
#include <string>
#include <vector>

#include "models/record_book.hpp"
#include "models/tree_groups.hpp"
#include "models/typed_text.hpp"

class QComboBox;
class QLabel;
class QPushButton;
class QTableWidget;

namespace gritwright::desktop {

class ColumnFit;
class GoneNotice;
class RecordForm;
class WishTable;

/// The groups of trees with the wishes a search for parts starts with: looked at, changed, added, left out and restored. What is
/// typed is kept in the record at once, and comes back by undo.
class GroupsPage : public QWidget {
  Q_OBJECT
 public:
  GroupsPage(RecordBook& book, const Catalogue& catalogue, QWidget* parent = nullptr);

  void set_units(UnitSystem units);
  /// Chooses the group of that name; an unknown one leaves the choice.
  void show_group(const QString& name);
  void take_focus();
  /// A group of the grower's own, as the chosen one is.
  void add_group();
  /// The grower's own goes; one of common practice is left out.
  void remove_group();
  /// Back to common practice, or offered again.
  void restore_group();

 signals:
  /// A search for parts for this group is wanted.
  void find_wanted(const QString& name);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  QWidget* list_side();
  QWidget* form_side();
  void add_rows();
  QPushButton* button(const char* object_name, const QString& text, const QString& is);
  [[nodiscard]] const TreeGroup* chosen() const;
  Problems save(const QString& what, const std::function<Problems(SpeciesProfile&)>& change);
  void take_wish(WishRow row, const WishText& typed);
  void choose_row();
  void refresh();
  void refresh_list();
  void refresh_wishes();
  void fit();

  /// What was typed of a wish and can't be kept.
  struct Unread {
    WishText typed;
    Problems problems;
  };

  RecordBook& book_;
  const Catalogue& catalogue_;
  UnitSystem units_ = UnitSystem::metric;
  std::vector<TreeGroup> groups_;
  std::string current_;
  std::optional<Id<SpeciesProfile>> stored_;  ///< of the group on screen, where the record has it
  std::map<WishRow, Unread> unread_;
  QTableWidget* list_ = nullptr;
  ColumnFit* columns_ = nullptr;
  QPushButton* remove_ = nullptr;
  QPushButton* restore_ = nullptr;
  QPushButton* find_ = nullptr;
  QLabel* title_ = nullptr;
  RecordForm* form_ = nullptr;
  GoneNotice* gone_ = nullptr;
  QComboBox* kinds_ = nullptr;
  WishTable* wishes_ = nullptr;
  QLabel* fault_ = nullptr;
  bool filling_ = false;
};

}  // namespace gritwright::desktop
