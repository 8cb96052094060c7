#pragma once
#include <QLineEdit>
#include <functional>

#include "models/bench.hpp"
#include "models/typed_text.hpp"

namespace gritwright::desktop {

/// Where a field keeps its text in the state; null where there is nothing to edit (no such component).
using TextPlace = std::function<QString*(BenchState&)>;

/// A line bound to one text of the bench. Typing is never blocked; a fault is shown beside it by whoever lays it out.
class TypedField : public QLineEdit {
  Q_OBJECT
 public:
  /// `what` names the thing in undo labels; `place` is unique to this field.
  TypedField(Bench& bench, Kind kind, std::function<QString()> what, QString place, TextPlace text, QWidget* parent = nullptr);

  [[nodiscard]] Kind kind() const { return kind_; }

 protected:
  bool event(QEvent* event) override;

 private:
  void write(const QString& typed);
  void read();

  Bench& bench_;
  Kind kind_;
  std::function<QString()> what_;
  QString place_;
  TextPlace text_;
};

}  // namespace gritwright::desktop
