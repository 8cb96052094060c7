#include "form_row.hpp"

#include <QAbstractItemModel>
#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMetaObject>
#include <QSize>
#include <QSizePolicy>
#include <QString>
#include <QVBoxLayout>
#include <algorithm>
#include <optional>
#include <utility>

#include "whole_choice.hpp"
#include "whole_hint.hpp"

namespace gritwright::desktop {

namespace {

constexpr int least_height = 26;  // a target for tired fingers

/// Where a hint has no room in its empty field it stands below. It stays while there is typing, so that nothing moves under the hands.
class HintBelow : public QLabel {
 public:
  HintBelow(QLineEdit& field, QWidget* parent) : QLabel(parent), field_(field) {
    setProperty("role", "muted");
    setWordWrap(true);
    field.setProperty(has_its_hint_below, true);
    // Without a text it would not count as one that wraps.
    QSizePolicy policy = sizePolicy();
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    field_.installEventFilter(this);
  }

  [[nodiscard]] QSize sizeHint() const override { return {0, 0}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {0, 0}; }
  // Before it was painted the label has no text yet.
  [[nodiscard]] int heightForWidth(int width) const override {
    ensurePolished();
    return is_wanted(width) ? fontMetrics().boundingRect(0, 0, std::max(1, width), 10000, Qt::TextWordWrap, field_.placeholderText()).height() : 0;
  }

 protected:
  // A form may leave it room that it did not ask for.
  void paintEvent(QPaintEvent* event) override {
    if (is_wanted(width())) QLabel::paintEvent(event);
  }

  bool eventFilter(QObject* watched, QEvent* event) override {
    // Of a new hint nothing is sent but that the field is painted.
    if (event->type() == QEvent::Paint && (text() != field_.placeholderText() || is_empty_ != seems_empty())) QMetaObject::invokeMethod(this, [this] { look_again(); }, Qt::QueuedConnection);
    if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange) hide_what_is_cut();
    if (event->type() == QEvent::FontChange) updateGeometry();
    if (event->type() == QEvent::ShowToParent || event->type() == QEvent::HideToParent) setHidden(field_.isHidden());
    return QLabel::eventFilter(watched, event);
  }

 private:
  [[nodiscard]] bool seems_empty() const { return field_.text().isEmpty() || (is_empty_ && field_.hasFocus()); }

  [[nodiscard]] bool is_wanted(int width) const {
    field_.ensurePolished();  // before it is shown its font may be one of before
    return seems_empty() && !hint_has_room(field_, width);
  }

  void look_again() {
    setText(field_.placeholderText());
    is_empty_ = seems_empty();
    hide_what_is_cut();
    updateGeometry();
  }

  void hide_what_is_cut() {
    if (is_wanted(field_.width()) == is_hiding_) return;
    is_hiding_ = !is_hiding_;
    hide_hint(field_, is_hiding_);
  }

  QLineEdit& field_;
  bool is_empty_ = false;
  bool is_hiding_ = false;  ///< what is cut in the field
};

/// As high as the field it stands beside, whatever stands below that.
class BesideField : public QLabel {
 public:
  BesideField(QLineEdit& field, const QString& text) : QLabel(text, field.parentWidget()), field_(field) {}

  [[nodiscard]] QSize sizeHint() const override { return as_high(QLabel::sizeHint()); }
  [[nodiscard]] QSize minimumSizeHint() const override { return as_high(QLabel::minimumSizeHint()); }

 private:
  /// A label that never had a text keeps the size it had in another font.
  [[nodiscard]] QSize as_high(const QSize& hint) const { return text().isEmpty() ? QSize(0, height_of_field()) : hint.expandedTo({0, height_of_field()}); }

  [[nodiscard]] int height_of_field() const {
    field_.ensurePolished();
    return std::max(least_height, field_.sizeHint().height());
  }

  QLineEdit& field_;
};

/// A box whose longest choice has no room beside the labels stands below its own.
class ChoiceRow : public QObject {
 public:
  ChoiceRow(QGridLayout& grid, QComboBox& box, QLabel& label, int line) : QObject(&box), grid_(grid), box_(box), label_(label), line_(line) {
    // By its longest choice it would ask for more beside the labels than below its own, and the form's width would follow from what follows from it.
    constexpr int least_signs = 8;
    box_.setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box_.setMinimumContentsLength(std::max(least_signs, box_.minimumContentsLength()));
    box_.installEventFilter(this);
    grid_.parentWidget()->installEventFilter(this);
    const auto choices_changed = [this] {
      widest_.reset();
      look_again_soon();
    };
    connect(box_.model(), &QAbstractItemModel::rowsInserted, this, choices_changed);
    connect(box_.model(), &QAbstractItemModel::rowsRemoved, this, choices_changed);
    connect(box_.model(), &QAbstractItemModel::dataChanged, this, choices_changed);
  }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    const bool of_form = watched == grid_.parentWidget();
    if (of_form && event->type() == QEvent::Resize) look_again();
    // Labels come, go and change their words, and get another font after the box.
    if (event->type() == QEvent::FontChange || (of_form && event->type() == QEvent::LayoutRequest)) look_again_soon();
    if (event->type() == QEvent::FontChange) widest_.reset();
    return QObject::eventFilter(watched, event);
  }

 private:
  void look_again_soon() {
    if (std::exchange(is_asked_, true)) return;
    QMetaObject::invokeMethod(this, [this] { look_again(); }, Qt::QueuedConnection);
  }

  /// Of all that name a field, those above theirs too: where a box stands must not follow from where others do.
  [[nodiscard]] int width_of_labels() const {
    int widest = 0;
    for (int at = 0; at < grid_.count(); ++at) {
      const auto* const label = qobject_cast<const QLabel*>(grid_.itemAt(at)->widget());
      if (label != nullptr && label->buddy() != nullptr && !label->isHidden()) widest = std::max(widest, label->sizeHint().width());
    }
    return widest;
  }

  [[nodiscard]] const QString& widest_choice() {
    if (widest_) return *widest_;
    widest_.emplace();
    const auto width = [this](const QString& choice) { return box_.fontMetrics().horizontalAdvance(choice); };
    for (int choice = 0; choice < box_.count(); ++choice)
      if (width(box_.itemText(choice)) > width(*widest_)) widest_ = box_.itemText(choice);
    return *widest_;
  }

  void look_again() {
    is_asked_ = false;
    const int room = grid_.parentWidget()->contentsRect().width() - width_of_labels() - grid_.horizontalSpacing();
    const bool is_below = !has_room_for(box_, widest_choice(), room);
    if (std::exchange(is_below_, is_below) == is_below) return;
    grid_.removeWidget(&label_);
    grid_.removeWidget(&box_);
    grid_.addWidget(&label_, line_, 0, 1, is_below ? 3 : 1);
    if (is_below) grid_.addWidget(&box_, line_ + 1, 0, 1, 3);
    else grid_.addWidget(&box_, line_, 1, 1, 2);
  }

  QGridLayout& grid_;
  QComboBox& box_;
  QLabel& label_;
  int line_;
  std::optional<QString> widest_;
  bool is_below_ = false;
  bool is_asked_ = false;
};

QLabel* buddy_of(QWidget& widget, QLabel* label) {
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

FormRow add_form_row(QGridLayout& grid, QLineEdit& field, const QString& label, bool has_unit) {
  QWidget* const form = field.parentWidget();
  FormRow row{buddy_of(field, new BesideField(field, label)), new BesideField(field, {}), new QLabel(form), new HintBelow(field, form)};
  row.unit->setProperty("role", "muted");
  row.fault->setProperty("role", "fault");
  row.fault->setWordWrap(true);
  row.fault->hide();
  auto* cell = new QVBoxLayout;
  cell->setSpacing(0);
  cell->addWidget(&field);
  cell->addWidget(row.hint);
  const int line = grid.rowCount();
  grid.addWidget(row.label, line, 0, Qt::AlignTop);
  grid.addLayout(cell, line, 1, 1, has_unit ? 1 : 2);
  grid.addWidget(row.unit, line, 2, Qt::AlignTop);
  grid.addWidget(row.fault, line + 1, 0, 1, 3);
  return row;
}

void set_hint(const FormRow& row, QLineEdit& field, const QString& hint) {
  if (field.placeholderText() == hint) return;
  field.setPlaceholderText(hint);
  row.hint->updateGeometry();
}

QLabel* add_plain_row(QGridLayout& grid, QWidget& widget, const QString& label) {
  const int line = grid.rowCount();
  // Without any text it would keep the size it had in another font.
  QLabel* const of_widget = buddy_of(widget, new QLabel(label.isEmpty() ? QStringLiteral(" ") : label, widget.parentWidget()));
  grid.addWidget(of_widget, line, 0);
  grid.addWidget(&widget, line, 1, 1, 2);
  auto* const box = qobject_cast<QComboBox*>(&widget);
  if (box == nullptr) return of_widget;
  new ChoiceRow(grid, *box, *of_widget, line);
  grid.setRowMinimumHeight(line + 1, 0);  // the next row comes after the line below
  return of_widget;
}

}  // namespace gritwright::desktop
