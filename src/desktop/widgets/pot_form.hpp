#pragma once
#include <QWidget>
#include <utility>
#include <vector>

#include "models/bench.hpp"
#include "models/pot_library.hpp"

class QComboBox;

namespace gritwright::desktop {

class FieldForm;

/// A text of the page of pots that are kept, in its words.
[[nodiscard]] QString as_of_kept_pots(const char* text);

/// The shapes of pots, by the names they are chosen by.
[[nodiscard]] std::vector<std::pair<Shape, QString>> pot_shapes();

/// The container: one of the grower's own or shape, inside lengths, fill line and how the mix is placed.
class PotForm : public QWidget {
  Q_OBJECT
 public:
  explicit PotForm(Bench& bench, QWidget* parent = nullptr);

  /// The pots to choose from.
  void set_pots(std::vector<KeptPot> pots);

 signals:
  void pot_wanted(const QString& id);

 private:
  void refresh();
  [[nodiscard]] QString settling_hint() const;
  void add_lengths();
  void add_fill();

  Bench& bench_;
  FieldForm* form_;
  std::vector<KeptPot> pots_;
  QComboBox* kept_;
  QComboBox* shapes_;
};

}  // namespace gritwright::desktop
