#include "form_row.hpp"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QToolTip>

namespace gritwright::desktop {

namespace {

constexpr int least_height = 26;  // a target for tired fingers

/// Says a hint that large text has no room for when its empty field is come to, by keys as by the mouse.
class CutHint : public QObject {
 public:
  explicit CutHint(QLineEdit& field) : QObject(&field), field_(field) { field.installEventFilter(this); }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::FocusIn && is_cut()) QToolTip::showText(field_.mapToGlobal(QPoint(0, field_.height())), field_.placeholderText(), &field_);
    return QObject::eventFilter(watched, event);
  }

 private:
  [[nodiscard]] bool is_cut() const {
    constexpr int around = 8;
    return field_.text().isEmpty() && field_.fontMetrics().horizontalAdvance(field_.placeholderText()) + around > field_.width();
  }

  QLineEdit& field_;
};

QLabel* buddy(QWidget& widget, const QString& text) {
  auto* label = new QLabel(text, widget.parentWidget());
  label->setBuddy(&widget);
  widget.setMinimumHeight(least_height);
  return label;
}

}  // namespace

QGridLayout* form_grid(QWidget* form) {
  auto* grid = new QGridLayout(form);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(4);
  grid->setColumnStretch(1, 1);
  return grid;
}

FormRow add_form_row(QGridLayout& grid, QWidget& field, const QString& label) {
  QWidget* const form = field.parentWidget();
  if (auto* line_edit = qobject_cast<QLineEdit*>(&field)) new CutHint(*line_edit);
  FormRow row{buddy(field, label), new QLabel(form), new QLabel(form)};
  row.unit->setProperty("role", "muted");
  row.fault->setProperty("role", "fault");
  row.fault->setWordWrap(true);
  row.fault->hide();
  const int line = grid.rowCount();
  grid.addWidget(row.label, line, 0);
  grid.addWidget(&field, line, 1);
  grid.addWidget(row.unit, line, 2);
  grid.addWidget(row.fault, line + 1, 0, 1, 3);
  return row;
}

void add_plain_row(QGridLayout& grid, QWidget& widget, const QString& label) {
  const int line = grid.rowCount();
  grid.addWidget(buddy(widget, label), line, 0);
  grid.addWidget(&widget, line, 1, 1, 2);
}

}  // namespace gritwright::desktop
