#pragma once
#include <QFrame>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "gritwright/report/quantity_text.hpp"
#include "gritwright/result.hpp"
#include "models/bench_state.hpp"

class QComboBox;
class QPushButton;

namespace gritwright::desktop {

class RecordForm;

/// A pot before it is one: nothing is kept or worked out of lengths that nobody measured. What is typed outlives the window until the pot
/// is kept.
class NewPotForm : public QFrame {
  Q_OBJECT
 public:
  explicit NewPotForm(QWidget* parent = nullptr);

  /// Comes into view with the cursor in its first field.
  void begin();
  void set_units(UnitSystem units);
  /// As typed, its name included; empty until shape, lengths and depth are there and can be.
  [[nodiscard]] const std::optional<Container>& pot() const { return pot_; }
  /// What was typed was kept elsewhere: the next pot begins empty.
  void forget();

 signals:
  void typed();
  void keep_wanted();
  void left();

 private:
  void add_length(const char* key, const QString& label, const QString& hint, QString PotSheet::*member, std::vector<std::string> places, std::function<bool()> is_shown = {},
                  std::function<QString()> label_now = {});
  void add_areas();
  void read();
  void work_out();

  RecordForm* form_;
  QComboBox* shapes_;
  QPushButton* keep_;
  QString name_;
  PotSheet sheet_;
  std::multimap<std::string, Problem> faults_;
  std::optional<Container> pot_;
};

}  // namespace gritwright::desktop
