#include "new_pot_form.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "models/bench_evaluation.hpp"
#include "pot_form.hpp"
#include "record_form.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

QString draft_of_pot(const char* key) { return QStringLiteral("new_pot/") + QLatin1String(key); }

}  // namespace

NewPotForm::NewPotForm(QWidget* parent) : QFrame(parent), form_(new RecordForm(this)), shapes_(new QComboBox(form_)), keep_(new QPushButton(tr("&Keep this pot"), this)) {
  setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 10, 8);
  auto* heading = new QLabel(tr("A new pot"), this);
  heading->setProperty("role", "heading");
  auto* words = new QLabel(tr("Measure its inside at the rim, and its depth. Nothing is worked out before."), this);
  words->setWordWrap(true);
  layout->addWidget(heading);
  layout->addWidget(words);
  layout->addWidget(form_);
  form_->add({QStringLiteral("new_pot_name"), tr("&Name"), Kind::words, tr("as you call it"), [this] { return name_; }, [this](const QString& text) -> Problems {
                name_ = text;
                QSettings().setValue(draft_of_pot("name"), text);
                work_out();
                return {};
              }});
  shapes_->setObjectName(QStringLiteral("new_pot_shape"));
  shapes_->setAccessibleName(tr("Shape"));
  for (const auto& [shape, name] : pot_shapes()) shapes_->addItem(name, static_cast<int>(shape));
  connect(shapes_, &QComboBox::activated, this, [this](int index) {
    sheet_.shape = static_cast<gritwright::Shape>(shapes_->itemData(index).toInt());
    QSettings().setValue(draft_of_pot("shape"), static_cast<int>(sheet_.shape));
    form_->refresh(false);
    work_out();
  });
  form_->add(tr("&Shape"), shapes_);
  const auto rim_name = [this] {
    if (has_width(sheet_.shape)) return tr("Rim, length");
    return sheet_.shape == gritwright::Shape::hexagonal || sheet_.shape == gritwright::Shape::octagonal ? tr("Rim, across flats") : tr("Rim, diameter");
  };
  const auto is_measured = [this] { return sheet_.shape != gritwright::Shape::profile; };
  add_length("rim_length", tr("Rim, length"), tr("inside, at the rim"), &PotSheet::rim_length, {"/rim", "/rim/length_cm", "/rim/diameter_cm", "/rim/across_flats_cm"}, is_measured, rim_name);
  add_length("rim_width", tr("Rim, width"), tr("inside, at the rim"), &PotSheet::rim_width, {"/rim/width_cm"}, [this] { return has_width(sheet_.shape); });
  add_length("middle", tr("Middle, diameter"), tr("inside, at half the depth"), &PotSheet::middle, {"/middle", "/middle/diameter_cm"}, [this] { return sheet_.shape == gritwright::Shape::drum; });
  add_length("depth", tr("&Depth inside"), tr("floor to rim"), &PotSheet::depth, {"/depth_cm"}, is_measured);
  add_areas();
  connect(form_->findChild<QLineEdit*>(QStringLiteral("new_pot_depth")), &QLineEdit::returnPressed, this, [this] {
    if (pot_) emit keep_wanted();
  });
  keep_->setObjectName(QStringLiteral("new_pot_keep"));
  keep_->setAccessibleName(tr("Keep this pot"));
  auto* leave = new QPushButton(tr("Not now"), this);
  leave->setObjectName(QStringLiteral("new_pot_leave"));
  leave->setAccessibleName(tr("Not now; what is typed waits"));
  auto* buttons = new QHBoxLayout;
  for (QPushButton* button : {keep_, leave}) {
    button->setMinimumHeight(28);
    buttons->addWidget(button);
  }
  buttons->addStretch(1);
  layout->addLayout(buttons);
  connect(keep_, &QPushButton::clicked, this, &NewPotForm::keep_wanted);
  connect(leave, &QPushButton::clicked, this, &NewPotForm::left);
  read();
}

void NewPotForm::add_length(const char* key, const QString& label, const QString& hint, QString PotSheet::*member, std::vector<std::string> places, std::function<bool()> is_shown,
                            std::function<QString()> label_now) {
  form_->add({QStringLiteral("new_pot_") + QLatin1String(key), label, Kind::length, hint, [this, member] { return sheet_.*member; },
              [this, key, member, places = std::move(places)](const QString& text) -> Problems {
                sheet_.*member = text;
                QSettings().setValue(draft_of_pot(key), text);
                work_out();
                Problems here;
                for (const std::string& place : places) {
                  const auto [first, last] = faults_.equal_range(place);
                  for (auto fault = first; fault != last; ++fault) here.push_back(fault->second);
                }
                return here;
              },
              std::move(is_shown), std::move(label_now)});
}

void NewPotForm::add_areas() {
  auto* field = form_->add({QStringLiteral("new_pot_areas"), as_of_kept_pots("Heights and areas"), Kind::words, as_of_kept_pots("cm and cm2 from the floor: 0 450; 4 520; 8 600"), [this] { return sheet_.areas; },
                            [this](const QString& text) -> Problems {
                              sheet_.areas = text;
                              QSettings().setValue(draft_of_pot("areas"), text);
                              work_out();
                              Problems here;
                              for (const auto& [place, fault] : faults_) here.push_back(fault);
                              return here;
                            },
                            [this] { return sheet_.shape == gritwright::Shape::profile; }});
  connect(field, &QLineEdit::returnPressed, this, [this] {
    if (pot_) emit keep_wanted();
  });
}

void NewPotForm::begin() {
  show();
  auto* first = form_->findChild<QLineEdit*>(QStringLiteral("new_pot_name"));
  first->setFocus();
  first->selectAll();
}

void NewPotForm::set_units(UnitSystem units) { form_->set_units(units); }

void NewPotForm::forget() {
  QSettings().remove(QStringLiteral("new_pot"));
  read();
}

void NewPotForm::read() {
  const QSettings settings;
  const auto text = [&](const char* key) { return settings.value(draft_of_pot(key)).toString(); };
  name_ = text("name");
  sheet_ = {};
  sheet_.shape = static_cast<gritwright::Shape>(settings.value(draft_of_pot("shape"), static_cast<int>(gritwright::Shape::rectangular)).toInt());
  const int shape = shapes_->findData(static_cast<int>(sheet_.shape));
  shapes_->setCurrentIndex(std::max(0, shape));
  if (shape < 0) sheet_.shape = gritwright::Shape::rectangular;
  sheet_.rim_length = text("rim_length");
  sheet_.rim_width = text("rim_width");
  sheet_.middle = text("middle");
  sheet_.depth = text("depth");
  sheet_.areas = text("areas");
  form_->refresh(true);
  work_out();
}

void NewPotForm::work_out() {
  PotSheet typed_so_far = sheet_;
  // Our default for filling, as on the bench; both stand in the form of a pot that was kept.
  typed_so_far.freeboard = QStringLiteral("0.5");
  if (sheet_.shape == gritwright::Shape::superellipse) typed_so_far.exponent = QStringLiteral("4");
  faults_.clear();
  pot_ = container_of(typed_so_far, faults_);
  if (pot_) pot_->name = (name_.trimmed().isEmpty() ? tr("pot") : name_.trimmed()).toStdString();
  keep_->setEnabled(pot_.has_value());
  emit typed();
}

}  // namespace gritwright::desktop
