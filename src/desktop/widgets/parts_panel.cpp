#include "parts_panel.hpp"

#include <QButtonGroup>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QSlider>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "charts/curve_look.hpp"
#include "field_form.hpp"
#include "gritwright/formats/number.hpp"
#include "text.hpp"
#include "typed_field.hpp"

namespace gritwright::desktop {

namespace {

constexpr int steps_per_part = 10;
constexpr int most_parts = 10;
constexpr int longest_name = 24;  // signs, then it is shortened in the middle

/// A slider in tenths of a part that keyboards move by half a part.
class PartsSlider : public QSlider {
 public:
  explicit PartsSlider(QWidget* parent) : QSlider(Qt::Horizontal, parent) {
    setRange(0, most_parts * steps_per_part);
    setSingleStep(steps_per_part / 2);
    setPageStep(steps_per_part);
    setMinimumHeight(26);
  }
};

}  // namespace

PartsPanel::PartsPanel(Bench& bench, QWidget* parent) : QFrame(parent), bench_(bench), list_(new QVBoxLayout), group_(new QButtonGroup(this)) {
  setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 10, 8);
  layout->setSpacing(4);
  auto* heading = new QLabel(tr("Components, in parts of loose litres"), this);
  heading->setProperty("role", "heading");
  heading->setWordWrap(true);
  layout->addWidget(heading);
  list_->setSpacing(2);
  layout->addLayout(list_);
  group_->setExclusive(true);
  connect(group_, &QButtonGroup::idClicked, this, [this](int index) { bench_.set_current_component(index); });
  connect(&bench_, &Bench::changed, this, &PartsPanel::refresh);
  connect(&bench_, &Bench::current_component_changed, this, &PartsPanel::refresh);
  build();
}

PartsPanel::Row PartsPanel::make_row(int index) {
  Row row{};
  row.widget = new QWidget(this);
  auto* grid = new QGridLayout(row.widget);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(0);
  row.choose = new QToolButton(row.widget);
  row.choose->setObjectName(QStringLiteral("choose_component_%1").arg(index + 1));
  row.choose->setCheckable(true);
  row.choose->setAutoRaise(true);
  row.choose->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  row.choose->setIconSize(QSize(34, 16));
  row.choose->setMinimumHeight(28);
  group_->addButton(row.choose, index);
  row.slider = new PartsSlider(row.widget);
  row.slider->setObjectName(QStringLiteral("parts_slider_%1").arg(index + 1));
  const auto at = static_cast<std::size_t>(index);
  const auto what = [this, at] { return tr("parts of %1").arg(at < bench_.state().components.size() ? bench_.state().components[at].name : QString()); };
  row.parts = new TypedField(bench_, Kind::number, what, QStringLiteral("parts_%1").arg(index), [at](BenchState& state) {
    return at < state.components.size() ? &state.components[at].parts : nullptr;
  }, row.widget);
  row.parts->setObjectName(QStringLiteral("parts_%1").arg(index + 1));
  row.parts->setMinimumHeight(26);
  row.fault = new QLabel(row.widget);
  row.fault->setProperty("role", "fault");
  row.fault->setWordWrap(true);
  connect(row.slider, &QSlider::valueChanged, this, [this, at, what, slider = row.slider](int value) {
    const QString text = number_text(static_cast<double>(value) / steps_per_part, 4);
    bench_.edit(what(), QStringLiteral("parts_slider_%1").arg(at), [&](BenchState& state) {
      if (at < state.components.size()) state.components[at].parts = text;
    });
    if (!slider->isSliderDown()) bench_.end_typing();
  });
  connect(row.slider, &QSlider::sliderReleased, &bench_, &Bench::end_typing);
  grid->addWidget(row.choose, 0, 0);
  grid->addWidget(row.slider, 0, 1);
  grid->addWidget(row.parts, 0, 2);
  grid->addWidget(row.fault, 1, 0, 1, 3);
  grid->setColumnStretch(1, 1);
  return row;
}

void PartsPanel::build() {
  for (const Row& row : rows_) {
    group_->removeButton(row.choose);
    // The row that asked for this may still be on the call stack.
    row.widget->hide();
    row.widget->deleteLater();
  }
  rows_.clear();
  for (int index = 0; index < static_cast<int>(bench_.state().components.size()); ++index) {
    rows_.push_back(make_row(index));
    list_->addWidget(rows_.back().widget);
  }
  refresh();
}

void PartsPanel::refresh() {
  if (rows_.size() != bench_.state().components.size()) return build();
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const ComponentSheet& component = bench_.state().components[i];
    const Row& row = rows_[i];
    const QString name = component.name.trimmed().isEmpty() ? tr("component %1").arg(i + 1) : component.name;
    if (row.choose->toolTip() != tr("Show %1").arg(name) || row.choose->icon().isNull()) {
      row.choose->setText(fontMetrics().elidedText(name, Qt::ElideMiddle, longest_name * fontMetrics().averageCharWidth()));
      row.choose->setIcon(swatch(look_of(static_cast<int>(i)), row.choose->iconSize(), devicePixelRatioF()));
      row.choose->setAccessibleName(tr("Show %1").arg(name));
      row.choose->setToolTip(tr("Show %1").arg(name));
      row.slider->setAccessibleName(tr("Parts of %1, slider").arg(name));
      row.parts->setAccessibleName(tr("Parts of %1").arg(name));
    }
    row.choose->setChecked(static_cast<int>(i) == bench_.current_component());
    const auto parts = parse_number(component.parts.trimmed().toStdString(), DecimalMark::point_or_comma);
    if (parts && !row.slider->isSliderDown()) {
      const QSignalBlocker quiet(row.slider);
      row.slider->setValue(qRound(std::clamp(*parts, 0.0, double(most_parts)) * steps_per_part));
    }
    const QString fault = fault_sentences(bench_.evaluation().components[i].faults, {"/parts"}, bench_.units());
    row.fault->setText(fault);
    row.fault->setVisible(!fault.isEmpty());
    row.parts->setAccessibleDescription(fault);
  }
  line_up();
}

void PartsPanel::take_focus() {
  const auto current = static_cast<std::size_t>(bench_.current_component());
  if (current >= rows_.size()) return;
  rows_[current].parts->setFocus();
  rows_[current].parts->selectAll();
}

void PartsPanel::line_up() {
  int widest = 0;
  for (const Row& row : rows_) widest = std::max(widest, row.choose->sizeHint().width());
  const int digits = fontMetrics().horizontalAdvance(QStringLiteral("00.00")) + 16;
  for (const Row& row : rows_) {
    row.choose->setFixedWidth(widest);
    row.parts->setFixedWidth(digits);
  }
}

void PartsPanel::add_component() {
  if (bench_.state().components.size() >= most_components) {
    emit bench_.told(tr("A mix here has up to %1 components; remove one first.").arg(most_components));
    return;
  }
  const QString name = tr("Component %1").arg(bench_.state().components.size() + 1);
  bench_.edit(tr("new component"), {}, [&](BenchState& state) {
    ComponentSheet fresh = empty_component(name);
    // A grower sieves with the sieves and pans at hand.
    if (!state.components.empty()) fresh.sheet = same_stack(state.components.back().sheet);
    state.components.push_back(fresh);
  });
  bench_.set_current_component(static_cast<int>(bench_.state().components.size()) - 1);
}

void PartsPanel::remove_component() {
  if (bench_.state().components.size() <= 1) return;
  const auto index = static_cast<std::size_t>(bench_.current_component());
  bench_.edit(tr("%1 removed").arg(bench_.state().components[index].name), {}, [&](BenchState& state) {
    state.components.erase(state.components.begin() + static_cast<std::ptrdiff_t>(index));
  });
}

void PartsPanel::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() != QEvent::PaletteChange && event->type() != QEvent::FontChange) return;
  for (const Row& row : rows_) row.choose->setIcon(QIcon());
  refresh();
}

}  // namespace gritwright::desktop
